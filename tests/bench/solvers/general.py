"""General solvers, each asked for the cheapest order of the same problem. Every one runs on one thread, in a process of
its own, and gets the same seconds of processor time, so that it matters little what else the machine does. What is told
is processor time too, without that for making its model."""

import json
import math
import os
import re
import resource
import shutil
import signal
import subprocess
import sys

import mip

HERE = os.path.dirname(os.path.abspath(__file__))
PATIENCE = 20  # how many times as long as its processor time a solver may take by the clock


class Answer:
    """order: items from 1, or None. lower: no order costs less, or None where it was not told."""

    def __init__(self, order, claimed, lower, proven, seconds):
        self.order, self.claimed, self.lower, self.proven, self.seconds = order, claimed, lower, proven, seconds


def run(command, seconds, most=None, **options):
    """What it printed, and the processor time that it took. It is ended after `most` seconds of that, where given."""

    def used():
        usage = resource.getrusage(resource.RUSAGE_CHILDREN)
        return usage.ru_utime + usage.ru_stime

    def limit():
        resource.setrlimit(resource.RLIMIT_CPU, (most, most + 1))

    begin = used()
    try:
        done = subprocess.run(
            command,
            capture_output=True,
            text=True,
            check=False,
            timeout=PATIENCE * seconds + 60,
            preexec_fn=limit if most else None,
            **options,
        )
    except subprocess.TimeoutExpired as late:
        output = late.stdout or b""
        return output.decode() if isinstance(output, bytes) else output, used() - begin
    if done.returncode not in (0, -signal.SIGXCPU, -signal.SIGKILL):
        raise RuntimeError(f"{command[0]} ended with {done.returncode}: {done.stderr.strip() or done.stdout.strip()}")
    return done.stdout, used() - begin


class Gecode:
    def __init__(self, name, search):
        self.name, self.search = name, search

    def missing(self):
        absent = [program for program in ("minizinc", "fzn-gecode") if not shutil.which(program)]
        return absent[0] + " is not installed" if absent else None

    def solve(self, instance, seconds, folder):
        data, flat = os.path.join(folder, "order.json"), os.path.join(folder, "order.fzn")
        with open(data, "w", encoding="utf-8") as file:
            json.dump(instance, file)
        models = [os.path.join(HERE, "order.mzn"), os.path.join(HERE, self.search), data]
        run(["minizinc", "-c", "--solver", "gecode", *models, "-o", flat, "--no-output-ozn"], seconds)
        text, used = run(["fzn-gecode", "-a", flat], seconds, most=max(1, round(seconds)))
        orders = re.findall(r"^order = array1d\(1\.\.\d+, \[([\d, ]+)\]\);", text, re.MULTILINE)
        totals = re.findall(r"^total = (\d+);", text, re.MULTILINE)
        if not orders or not totals:
            return Answer(None, None, None, False, used)
        proven = "==========" in text
        claimed = int(totals[-1])
        order = [int(item) for item in orders[-1].split(",")]
        return Answer(order, claimed, claimed if proven else None, proven, used)


class Cbc:
    name = "CBC"

    def missing(self):
        return None if shutil.which("cbc") else "cbc is not installed"

    def solve(self, instance, seconds, folder):
        program, x = mip.program_of(instance)
        model, solution = os.path.join(folder, "order.lp"), os.path.join(folder, "order.txt")
        with open(model, "w", encoding="utf-8") as file:
            file.write(program.lp())
        if os.path.exists(solution):
            os.remove(solution)
        command = ["cbc", model, "-timeMode", "cpu", "-seconds", str(seconds), "-ratioGap", "0"]
        # Costs are whole: what is less than one cheaper is no cheaper.
        text, used = run(command + ["-allowableGap", "0.5", "-solve", "-solution", solution], seconds)
        proven = "Result - Optimal solution found" in text
        cost = re.search(r"^Objective value: +([-\d.e+]+)", text, re.MULTILINE)
        lower = re.search(r"^Lower bound: +([-\d.e+]+)", text, re.MULTILINE)
        if not cost or not os.path.exists(solution):
            return Answer(None, None, rounded_up(lower and float(lower[1])), False, used)
        values = {}
        with open(solution, encoding="utf-8") as file:
            for line in file:
                variable = re.match(r"[* ]*\d+ v(\d+) +([-\d.e+]+)", line)
                if variable:
                    values[int(variable[1])] = float(variable[2])
        claimed = round(float(cost[1]))
        return Answer(
            mip.order_of(x, values), claimed, claimed if proven else rounded_up(lower and float(lower[1])), proven, used
        )


class Highs:
    name = "HiGHS"
    worker = [sys.executable, os.path.join(HERE, "milp.py")]

    def missing(self):
        done = subprocess.run(self.worker + ["--is-there"], capture_output=True, text=True, check=False)
        return None if done.returncode == 0 else "scipy.optimize.milp is not there: " + done.stderr.strip()

    def solve(self, instance, seconds, folder):
        del folder
        program, x = mip.program_of(instance)
        limit = seconds  # HiGHS goes by the clock: where the machine left it less, it is asked again with more
        while True:
            text, used = run(self.worker + [str(limit)], limit, input=json.dumps(vars(program)))
            if not text:
                return Answer(None, None, None, False, used)
            found = json.loads(text)
            if found["proven"] or found["seconds"] >= 0.9 * seconds or limit >= PATIENCE * seconds:
                break
            limit = min(PATIENCE * seconds, 1.1 * limit * seconds / max(found["seconds"], 0.01 * limit))
        if found["values"] is None:
            return Answer(None, None, rounded_up(found["lower"]), False, found["seconds"])
        claimed, lower = round(found["cost"]), rounded_up(found["lower"])
        proven = found["proven"] and lower is not None and lower >= claimed
        return Answer(mip.order_of(x, dict(enumerate(found["values"]))), claimed, lower, proven, found["seconds"])


def rounded_up(lower):
    """Costs are whole, so a bound is at least the next whole number; what is a hair above one is that one."""
    return None if lower is None or not math.isfinite(lower) else math.ceil(lower - 0.01)


PROVING = [Gecode("Gecode", "prove.mzn"), Cbc(), Highs()]
IMPROVING = [Gecode("Gecode, improving", "improve.mzn")]
