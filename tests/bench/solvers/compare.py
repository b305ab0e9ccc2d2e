"""Holds the search for orders beside general solvers, on the same problems in one run.

Each problem goes to the search and to every solver that is installed; each order is counted anew by `order-instances
check`, which shares nothing with the search. What is proven must agree: a difference ends the run with 1. With --agree
small problems alone, nothing of times, and 77 where no solver is installed: for CTest.
"""

import argparse
import json
import statistics
import subprocess
import sys
import tempfile

import general

LOOPS = [60, 80, 100]  # percent of items that end where they begin; by seed in turn where solvers are compared
SEEDS = 20  # of what the search is measured on by itself
LONGEST = 10  # seconds for the search


class Search:
    """The search of the program, through order-instances."""

    def __init__(self, program):
        self.program = program

    def run(self, *words):
        return subprocess.run([self.program, *words], capture_output=True, text=True, check=True).stdout

    def written(self, name):
        return json.loads(self.run("write", name))[name]

    def solved(self, names, seconds=LONGEST):
        """By name, in one process one after the other."""
        found = json.loads(self.run("solve", str(seconds), *names))
        return {name: found[name] for name in names}

    def cost_of(self, name, order):
        done = subprocess.run(
            [self.program, "check", name, *map(str, order)], capture_output=True, text=True, check=False
        )
        if done.returncode != 0:
            fail(f"{name}: {done.stdout.strip() or done.stderr.strip()}: {order}")
        return int(done.stdout)


def fail(reason):
    sys.exit(f"compare.py: {reason}")


def with_twins(instance):
    """Of two items that cost the same wherever they stand, where the one may always stand in for the other, the first
    comes first: nothing is lost, and every solver has less to look at."""
    count, ways, first = instance["items"], instance["ways"], instance["first"]
    before = [list(row) for row in instance["before"]]
    everything = range(count)

    def alike(a, b):
        return first[a] == first[b] and ways[a] == ways[b] and all(row[a] == row[b] for row in ways)

    def may_come_first(a, b):
        return all((not before[c][a] or before[c][b]) and (not before[b][c] or before[a][c]) for c in everything)

    def add(a, b):
        left = [a] + [c for c in everything if before[c][a]]
        right = [b] + [c for c in everything if before[b][c]]
        for c in left:
            for d in right:
                before[c][d] = True

    for a in everything:
        for b in range(a + 1, count):
            if before[a][b] or before[b][a] or not alike(a, b):
                continue
            if may_come_first(a, b):
                add(a, b)
            elif may_come_first(b, a):
                add(b, a)
    return {**instance, "before": before}


def answers(search, name, solvers, seconds, folder, twins=True):
    """By solver, each with its cost counted anew."""
    instance = search.written(name)
    if twins:
        instance = with_twins(instance)
    found = {}
    for solver in solvers:
        answer = solver.solve(instance, seconds, folder)
        answer.cost = None if answer.order is None else search.cost_of(name, answer.order)
        if answer.cost is not None and answer.cost != answer.claimed:
            fail(f"{name}: {solver.name} says {answer.claimed}, but its order costs {answer.cost}")
        if answer.proven and answer.cost is None:
            fail(f"{name}: {solver.name} proved something and has no order")
        found[solver.name] = answer
    return found


def checked(search, names, seconds=LONGEST):
    """What the search makes of them, each cost counted anew."""
    found = search.solved(names, seconds)
    for name, ours in found.items():
        if search.cost_of(name, ours["order"]) != ours["cost"]:
            fail(f"{name}: the order does not cost what the search says")
    return found


def hold_together(name, ours, others):
    """No bound may be above a cost that is known, so costs that are proven are the same."""
    costs = {"the search": ours["cost"], **{who: each.cost for who, each in others.items() if each.cost is not None}}
    bounds = {"the search": ours["lower"]}
    bounds.update({who: each.lower for who, each in others.items() if each.lower is not None})
    cheapest = min(costs, key=costs.get)
    highest = max(bounds, key=bounds.get)
    if bounds[highest] > costs[cheapest]:
        fail(f"{name}: {cheapest} has an order of {costs[cheapest]}, below the bound {bounds[highest]} of {highest}")


def percent_above(cost, least):
    return 100.0 * (cost - least) / least


def table(search, solvers, arguments):
    """Prints a row for each problem and solver; what of it the targets ask for."""
    noted = []
    names = {
        f"{items}-{sections}-{LOOPS[seed % len(LOOPS)]}-{seed}": (items, sections)
        for sections in arguments.sections
        for items in arguments.items
        for seed in range(1, arguments.instances + 1)
    }
    if not names:
        return noted
    heading = f"{'problem':<16}{'solver':<20}{'cost':>8}{'bound':>8}  {'status':<10}{'time':>12}"
    heading += f"{'x search':>11}{'gap %':>8}"
    print(heading)
    print("-" * len(heading), flush=True)
    with tempfile.TemporaryDirectory() as folder:
        for name, ours in checked(search, list(names)).items():
            status = "proven" if ours["status"] == "optimal" else "bounded"
            print(
                f"{name:<16}{'the search':<20}{ours['cost']:>8}{ours['lower']:>8}  {status:<10}"
                f"{ours['milliseconds']:>9.2f} ms",
                flush=True,
            )
            others = {}
            for solver in solvers:
                others |= answers(search, name, [solver], arguments.seconds, folder)
                print(row_of(solver.name, others[solver.name], ours), flush=True)
            hold_together(name, ours, others)
            noted.append((*names[name], ours, others))
    return noted


def row_of(who, answer, ours):
    ratio, gap = "", ""
    if answer.proven and ours["status"] == "optimal":
        ratio = f"{answer.seconds * 1000 / max(ours['milliseconds'], 0.001):,.0f}"
    if answer.cost is not None:
        gap = f"{percent_above(answer.cost, ours['cost']):.1f}"
    status = "proven" if answer.proven else "none" if answer.cost is None else "bounded"
    cost, lower = ("-" if value is None else value for value in (answer.cost, answer.lower))
    return f"{'':<16}{who:<20}{cost:>8}{lower:>8}  {status:<10}{answer.seconds:>10.2f} s{ratio:>11}{gap:>8}"


class Summary:
    def __init__(self):
        print(f"\n{'what':<58}{'target':>9}{'reached':>14}  met")
        print("-" * 86)

    def add(self, what, target, reached, met):
        print(f"{what:<58}{target:>9}{reached:>14}  {'-' if met is None else 'yes' if met else 'no'}", flush=True)


def compare_summary(summary, noted, seconds):
    for items, least in ((12, 200), (20, 1000)):
        rows = [(ours, others) for count, sections, ours, others in noted if count == items and sections == 1]
        times = [
            min(other.seconds for other in others.values() if other.proven) * 1000 / max(ours["milliseconds"], 0.001)
            for ours, others in rows
            if ours["status"] == "optimal" and any(other.proven for other in others.values())
        ]
        if rows:
            what = f"faster than the best to prove, N={items} ({len(times)} of {len(rows)}), median"
            middle = statistics.median(times) if times else None
            reached = f"{middle:,.0f} x" if times else "none proved"
            summary.add(what, f"{least} x", reached, middle >= least if times else None)
            if times:
                summary.add("  the least of them", f"{least} x", f"{min(times):,.0f} x", min(times) >= least)
    for items in (30, 40):
        rows = [(ours, others) for count, sections, ours, others in noted if count == items and sections == 1]
        for who in sorted({who for _, others in rows for who in others}):
            below = sum(
                ours["status"] == "optimal"
                and ours["milliseconds"] <= 1000
                and (others[who].cost is None or ours["cost"] < others[who].cost)
                for ours, others in rows
            )
            what = f"N={items}: proven in 1 s, below {who}'s {seconds:g} s"
            asked = who.startswith("Gecode")
            summary.add(what, "all" if asked else "", f"{below} of {len(rows)}", below == len(rows) if asked else None)


def search_summary(summary, search):
    """What the search reaches by itself, over 20 seeds of each kind."""

    def measured(items, sections, loops, soft=False, seconds=LONGEST):
        names = [f"{items}-{sections}-{loops}-{seed}{'-soft' if soft else ''}" for seed in range(1, SEEDS + 1)]
        return list(checked(search, names, seconds).values())

    def median(what, rows, most):
        middle = statistics.median(row["milliseconds"] for row in rows)
        proven = sum(row["status"] == "optimal" for row in rows)
        label = f"{what}, proof, median ({proven} of {len(rows)} proven)"
        met = None if most is None else middle <= most and 2 * proven > len(rows)
        summary.add(label, "" if most is None else f"{most} ms", f"{middle:.2f} ms", met)

    def within(what, rows, cost):
        gaps = [percent_above(row[cost], row["lower"]) if row[cost] >= 0 else float("inf") for row in rows]
        summary.add(what, "10 %", f"{max(gaps):.1f} %", max(gaps) <= 10)

    for loops in LOOPS:
        for items, most in ((12, 1), (20, 10), (30, 40), (40, 60), (60, 600)):
            rows = measured(items, 1, loops)
            median(f"N={items}, {loops} % loops", rows, most)
            if items == 60:
                proven = sum(row["status"] == "optimal" for row in rows)
                reached = f"{100 * proven / len(rows):.0f} %"
                summary.add(f"  proven within {LONGEST} s", "90 %", reached, 10 * proven >= 9 * len(rows))
                within("  after 50 ms, above the bound at most", rows, "soon")
    for items in (20, 40, 60):
        median(f"N={items} in 5 sections, 60 % loops", measured(items, 5, 60), None)
    for loops in LOOPS:
        median(f"soft, N=20, {loops} % loops", measured(20, 1, loops, True), 150)
        within(f"soft, N=30, {loops} % loops, after 3 s at most", measured(30, 1, loops, True, 3), "cost")
        median(f"soft, N=60 in 5 sections, {loops} % loops", measured(60, 5, loops, True), 100)


def agree(search, solvers):
    """Small problems, on which all that is installed must come to the same cost by proof."""
    proofs = 0
    with tempfile.TemporaryDirectory() as folder:
        for seed in range(1, 13):
            items = 3 + seed % 6
            name = f"{items}-{1 + seed % 3}-{LOOPS[seed % len(LOOPS)]}-{seed}"
            ours = checked(search, [name])[name]
            if ours["status"] != "optimal":
                fail(f"{name}: the search proved nothing")
            for who, answer in answers(search, name, solvers, 60, folder, twins=seed % 2 == 0).items():
                if not answer.proven or answer.cost != ours["cost"]:
                    fail(f"{name}: the search proved {ours['cost']}, {who} has {answer.cost}, proven: {answer.proven}")
                proofs += 1
    print(f"{proofs} proofs of {', '.join(solver.name for solver in solvers)} agree with the search.")


def numbers(text):
    return [int(word) for word in text.split(",")]


def main():
    parser = argparse.ArgumentParser(prog="packaging/bench --solvers", description=__doc__.split("\n", maxsplit=1)[0])
    parser.add_argument("--program", required=True, help=argparse.SUPPRESS)
    parser.add_argument("--agree", action="store_true", help=argparse.SUPPRESS)
    parser.add_argument("--seconds", type=float, default=60, help="for each general solver and problem (60)")
    parser.add_argument("--instances", type=int, default=3, help="seeds of each size for them (3)")
    parser.add_argument("--items", type=numbers, default=[12, 20, 30, 40], help="sizes (12,20,30,40)")
    parser.add_argument("--sections", type=numbers, default=[1, 5], help="in how many sections (1,5)")
    parser.add_argument("--no-summary", action="store_true", help="leave out what the search reaches by itself")
    arguments = parser.parse_args()
    search = Search(arguments.program)

    solvers = []
    for solver in general.PROVING + ([] if arguments.agree else general.IMPROVING):
        missing = solver.missing()
        if missing:
            print(f"{solver.name} is left out: {missing}")
        else:
            solvers.append(solver)
    if arguments.agree:
        if not solvers:
            print("No general solver is installed: packaging/setup --with solvers")
            sys.exit(77)
        agree(search, solvers)
        return
    print("Names are ITEMS-SECTIONS-LOOPS-SEED. Times and limits are processor time.\n")
    noted = table(search, solvers, arguments)
    summary = Summary()
    compare_summary(summary, noted, arguments.seconds)
    if not arguments.no_summary:
        search_summary(summary, search)


main()
