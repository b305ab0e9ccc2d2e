#!/usr/bin/python3
"""Composes a class with keyboard and mouse as a teacher would, and looks at what is on the disk afterwards.

The program is driven from another process: its parts are found by role and name through the accessibility bus, as a
screen reader finds them, and keys and mouse go through the X server. Started by on_display.
"""

import argparse
import json
import pathlib
import shutil
import subprocess
import sys
import tempfile
import time

import pyatspi

# What the window calls its parts. The test fails when a name is lost: a screen reader would lose it too.
CATALOGUE = "Movements"
SEARCH = "Find a movement"
TERRAIN = "Terrain of the class"
OUTLINE = "Outline of the class"
FILE_MENU = "File"
SAVE_AS = "Save As"
CARD = "Card"
SAVE_PDF = "Save as PDF"

PATIENCE = 60  # seconds for anything to appear, also on a slow machine


class Failure(Exception):
    pass


def wait_for(what, found, patience=PATIENCE):
    """Asks found() until it returns something true, and returns that."""
    end = time.monotonic() + patience
    while True:
        try:
            result = found()
        except Exception:  # an object may go away while it is looked at
            result = None
        if result:
            return result
        if time.monotonic() > end:
            raise Failure(f"waited {patience} s in vain for {what}")
        time.sleep(0.1)


def xdotool(*words):
    subprocess.run(["xdotool", *map(str, words)], check=True, timeout=30)


def press(*keys):
    xdotool("key", "--clearmodifiers", *keys)
    time.sleep(0.1)


def type_text(text):
    xdotool("type", "--clearmodifiers", "--delay", "12", text)


def walk(node, depth=0):
    yield node
    if depth < 30:
        for index in range(min(node.childCount, 2000)):
            child = node.getChildAtIndex(index)
            if child:
                yield from walk(child, depth + 1)


def plain(name):
    """A name without the ellipsis that says that a question follows."""
    return name.rstrip(".\u2026").strip()


class Program:
    def __init__(self, command, process_log):
        self.process = subprocess.Popen(command, stdin=subprocess.DEVNULL, stdout=process_log, stderr=process_log)

    def root(self):
        def mine():
            if self.process.poll() is not None:
                return None
            for application in pyatspi.Registry.getDesktop(0):
                if application and application.get_process_id() == self.process.pid:
                    return application
            return None

        return wait_for("the program on the accessibility bus", mine)

    def find(self, name, *roles):
        """What is on the screen under that name, in one of the roles, or in any."""

        def seek():
            for node in walk(self.root()):
                if plain(node.name) == name and (not roles or node.getRole() in roles):
                    if node.getState().contains(pyatspi.STATE_SHOWING):
                        return node
            return None

        return wait_for(f"something named {name!r}", seek)


def box_of(node):
    extents = node.queryComponent().getExtents(pyatspi.DESKTOP_COORDS)
    if extents.width <= 0 or extents.height <= 0:
        raise Failure(f"{node.name!r} has no place on the screen")
    return extents


def centre_of(node):
    extents = box_of(node)
    return extents.x + extents.width // 2, extents.y + extents.height // 2


def click(node):
    x, y = centre_of(node)
    xdotool("mousemove", x, y)
    xdotool("click", 1)
    time.sleep(0.2)


def drag(start, end):
    """Slowly enough, and in enough steps, for a real drag to begin and to be followed."""
    xdotool("mousemove", *start)
    xdotool("mousedown", 1)
    time.sleep(0.2)
    steps = 12
    for step in range(1, steps + 1):
        x = start[0] + (end[0] - start[0]) * step // steps
        y = start[1] + (end[1] - start[1]) * step // steps
        xdotool("mousemove", x, y)
        time.sleep(0.05)
    time.sleep(0.3)
    xdotool("mouseup", 1)


def items_of(view, role=pyatspi.ROLE_LIST_ITEM):
    return [child for child in (view.getChildAtIndex(i) for i in range(view.childCount)) if child.getRole() == role]


def choose_menu(program, menu, entry):
    click(program.find(menu, pyatspi.ROLE_MENU_ITEM, pyatspi.ROLE_MENU))
    click(program.find(entry, pyatspi.ROLE_MENU_ITEM))


def name_file(path):
    """Answers the file dialog that is open: its field for the name has the keyboard."""
    time.sleep(0.5)
    press("ctrl+a")
    type_text(str(path))
    press("Return")


def steps_of(class_file):
    tree = json.loads(class_file.read_text(encoding="utf-8"))
    return [step for section in tree["sections"] for step in section["steps"]], tree


def check(condition, message):
    if not condition:
        raise Failure(message)


def compose(options, work, log):
    studio = work / "studio"
    shutil.copytree(options.studio, studio)
    class_file = sorted((studio / "classes").glob("*.json"))[0]
    before, tree = steps_of(class_file)
    listed = json.loads(subprocess.run([options.console, "list", "movements", "--json"], check=True,
                                       capture_output=True, text=True, timeout=60).stdout)["items"]
    taken = {step["movement"] for step in before}
    # A name that is part of no other, so that looking for it finds one.
    wanted = next(item for item in listed if item["id"] not in taken
                  and sum(item["name"].lower() in other["name"].lower() for other in listed) == 1)

    program = Program([options.program, str(class_file)], log)
    try:
        drive(program, options, work, class_file, before, wanted, tree["name"])
    except Exception:
        take_picture(options.pictures)
        raise
    finally:
        if program.process.poll() is None:
            program.process.kill()


def drive(program, options, work, class_file, before, wanted, title):
    catalogue = program.find(CATALOGUE, pyatspi.ROLE_LIST)
    wait_for("movements in the catalogue", lambda: len(items_of(catalogue)) > 20)
    terrain = program.find(TERRAIN)
    outline = program.find(OUTLINE)
    wait_for("the steps of the class in the terrain", lambda: terrain.childCount >= len(before))
    shown = terrain.childCount
    check(outline.childCount > 0, "the outline shows no step")

    # By keyboard: find it, go into the list, take it.
    click(program.find(SEARCH, pyatspi.ROLE_TEXT))
    type_text(wanted["name"])
    wait_for("the movement that was looked for",
             lambda: items_of(catalogue) and items_of(catalogue)[0].name.startswith(wanted["name"]))
    press("Down")
    press("Return")
    wait_for("a new step in the terrain", lambda: terrain.childCount == shown + 1)

    # By mouse: from the catalogue into the terrain.
    click(program.find(SEARCH, pyatspi.ROLE_TEXT))
    press("ctrl+a", "BackSpace")
    wait_for("the whole catalogue", lambda: len(items_of(catalogue)) > 20)
    visible = [item for item in items_of(catalogue) if item.getState().contains(pyatspi.STATE_SHOWING)]
    dragged = visible[min(2, len(visible) - 1)]
    drag(centre_of(dragged), centre_of(terrain))
    wait_for("a second new step in the terrain", lambda: terrain.childCount == shown + 2)

    saved = work / "studio" / "classes" / "composed-from-outside.json"
    choose_menu(program, FILE_MENU, SAVE_AS)
    name_file(saved)
    wait_for("the saved class", saved.exists)

    card = work / "card.pdf"
    choose_menu(program, FILE_MENU, CARD)
    click(program.find(SAVE_PDF, pyatspi.ROLE_PUSH_BUTTON))
    name_file(card)
    wait_for("the card", lambda: card.exists() and card.stat().st_size > 1000)
    press("Escape")
    time.sleep(0.3)
    press("ctrl+q")
    try:
        code = program.process.wait(PATIENCE)
    except subprocess.TimeoutExpired:
        raise Failure("the program did not quit") from None
    check(code == 0, f"the program ended with {code}")
    look_at_files(options, class_file, saved, card, before, wanted, title)


def look_at_files(options, class_file, saved, card, before, wanted, title):
    untouched, _ = steps_of(class_file)
    check(untouched == before, "the class that was opened was changed, though another name was given")
    after, tree = steps_of(saved)
    check(len(after) == len(before) + 2, f"{len(before)} steps became {len(after)}, not two more")
    check(wanted["id"] in {step["movement"] for step in after}, f"{wanted['id']} is not in the saved class")
    kept = [step for step in after if step in before]
    check(kept == before, "the steps that were there before are not as they were")
    check(tree["name"] == title, "the class lost its name")
    subprocess.run([options.console, "validate", str(saved)], check=True, timeout=60)

    facts = subprocess.run(["pdfinfo", str(card)], check=True, capture_output=True, text=True, timeout=60).stdout
    pages = next(line.split()[1] for line in facts.splitlines() if line.startswith("Pages:"))
    check(pages == "1", f"the card has {pages} pages")
    words = " ".join(subprocess.run(["pdftotext", "-layout", str(card), "-"], check=True, capture_output=True, text=True,
                                    timeout=60).stdout.split())
    check(title in words, "the card does not name the class")
    first_word = wanted["name"].split()[0]
    check(first_word in words, f"the card does not name {wanted['name']}")


def take_picture(folder):
    picture = folder / "compose_from_outside.png"
    if shutil.which("import"):
        subprocess.run(["import", "-window", "root", str(picture)], check=False, timeout=30)
        print(f"what was on the screen: {picture}", file=sys.stderr)


def main():
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("--program", required=True)
    parser.add_argument("--console", required=True)
    parser.add_argument("--studio", type=pathlib.Path, required=True)
    parser.add_argument("--pictures", type=pathlib.Path, required=True)
    options = parser.parse_args()

    with tempfile.TemporaryDirectory() as folder, tempfile.TemporaryFile("w+") as log:
        try:
            compose(options, pathlib.Path(folder), log)
        except (Failure, subprocess.SubprocessError, StopIteration) as fault:
            print(f"failed: {fault}", file=sys.stderr)
            log.seek(0)
            sys.stderr.write(log.read())
            return 1
    print("composed, saved, printed and read back")
    return 0


if __name__ == "__main__":
    sys.exit(main())
