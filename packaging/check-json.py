#!/usr/bin/python3
"""Holds the JSON files of a folder against the schemas in its folder schema/.

A schema says by properties.format.const which files it is for. A file of the demo studio that no schema is for is a
fault; knowledge files are checked where there is a schema for them.

Usage: check-json.py RESOURCES
"""

import json
import pathlib
import sys

import jsonschema


def load_schemas(folder):
    schemas = {}
    for file in sorted(folder.glob("*.json")):
        schema = json.loads(file.read_text(encoding="utf-8"))
        jsonschema.validators.validator_for(schema).check_schema(schema)
        schemas[schema["properties"]["format"]["const"]] = schema
    return schemas


def faults_of(file, schemas, required):
    document = json.loads(file.read_text(encoding="utf-8"))
    schema = schemas.get(document.get("format"))
    if schema is None:
        return [f"{file}: no schema for format {document.get('format')!r}"] if required else []
    validator = jsonschema.validators.validator_for(schema)(schema, format_checker=jsonschema.FormatChecker())
    return [
        f"{file}: /{'/'.join(map(str, error.absolute_path))}: {error.message}" for error in validator.iter_errors(document)
    ]


def main():
    resources = pathlib.Path(sys.argv[1])
    schemas = load_schemas(resources / "schema")
    if not schemas:
        print("no schemas")
        return 1
    faults, count = [], 0
    for file in sorted(resources.rglob("*.json")):
        if file.parent.name == "schema":
            continue
        count += 1
        faults += faults_of(file, schemas, required="demo" in file.relative_to(resources).parts)
    print("\n".join(faults + [f"{count} files, {len(schemas)} schemas, {len(faults)} faults"]))
    return 1 if faults else 0


if __name__ == "__main__":
    sys.exit(main())
