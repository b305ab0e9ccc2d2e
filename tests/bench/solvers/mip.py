"""The cheapest order as a mixed-integer program, for solvers that go by linear relaxation.

Nodes are the items and 0, where the order begins and ends. A binary x[a, b] for each way that an order can use says that
b stands right behind a; each node is left once and come to once.

Two formulations of what makes one order of that, both with everything that the precedences fix beforehand:

  flow        one good flows from 0 and each item takes one unit of it, so the flow into an item tells its place
              (single commodity: Gavish and Graves 1978); places are tied by the lifted subtour rows of Desrochers and
              Laporte 1991 too, stand within what the precedences leave, and keep each precedence
  precedence  y[a, b] says that a comes somewhere before b; x[a, b] <= y[a, b], y[a, b] + y[b, a] = 1, and no three
              items go round: y[a, b] + y[b, c] + y[c, a] <= 2, lifted by x[b, a] (Sarin, Sherali and Bhootra 2005)
"""


class Program:
    """min cost x, with low <= row x <= high; all variables within bounds, some of them whole."""

    def __init__(self):
        self.cost, self.low, self.high, self.whole = [], [], [], []
        self.rows = []  # ({variable: factor}, low, high)

    def variable(self, cost=0, low=0, high=1, whole=False):
        self.cost.append(cost)
        self.low.append(low)
        self.high.append(high)
        self.whole.append(whole)
        return len(self.cost) - 1

    def row(self, terms, low=None, high=None):
        self.rows.append((dict(terms), low, high))

    def lp(self):
        """In the LP format."""

        def summed(terms):
            parts = [f"{factor:+g} v{at}" for at, factor in terms if factor]
            return "\n ".join(" ".join(parts[i : i + 8]) for i in range(0, len(parts), 8)) or "0 v0"

        lines = ["Minimize", " cost: " + summed(enumerate(self.cost)), "Subject To"]
        for terms, low, high in self.rows:
            left = " " + summed(terms.items())
            if low == high:
                lines.append(f"{left} = {low}")
                continue
            if high is not None:
                lines.append(f"{left} <= {high}")
            if low is not None:
                lines.append(f"{left} >= {low}")
        lines.append("Bounds")
        lines += [f" {low} <= v{at} <= {high}" for at, (low, high) in enumerate(zip(self.low, self.high))]
        lines.append("Generals")
        lines += [f" v{at}" for at, whole in enumerate(self.whole) if whole]
        lines.append("End")
        return "\n".join(lines) + "\n"


def program_of(instance, formulation):
    """The program, and what x[a, b] is called in it: {(a, b): variable}. Items are numbered from 1."""
    count = instance["items"]
    items = range(1, count + 1)

    def before(a, b):
        return instance["before"][a - 1][b - 1]

    earliest = {a: 1 + sum(before(b, a) for b in items) for a in items}
    latest = {a: count - sum(before(a, b) for b in items) for a in items}

    def follows(a, b):
        if a == b:
            return False
        if a == 0:
            return earliest[b] == 1
        if b == 0:
            return latest[a] == count
        return not before(b, a) and not any(before(a, c) and before(c, b) for c in items)

    def way(a, b):
        return 0 if b == 0 else instance["first"][b - 1] if a == 0 else instance["ways"][a - 1][b - 1]

    program = Program()
    nodes = range(0, count + 1)
    x = {(a, b): program.variable(way(a, b), whole=True) for a in nodes for b in nodes if follows(a, b)}
    for a in nodes:
        program.row([(x[a, b], 1) for b in nodes if (a, b) in x], 1, 1)
        program.row([(x[b, a], 1) for b in nodes if (b, a) in x], 1, 1)
    (_flow if formulation == "flow" else _precedence)(program, x, items, before, earliest, latest)
    return program, x


def _flow(program, x, items, before, earliest, latest):
    count = len(items)
    place = {a: program.variable(0, earliest[a], latest[a]) for a in items}
    # What is left to hand out on the way from a to b: count - place of a.
    flow = {}
    for (a, b), used in x.items():
        if b == 0:
            continue
        most = count if a == 0 else min(count - earliest[a], count - earliest[b] + 1)
        least = count if a == 0 else max(1, count - latest[a], count - latest[b] + 1)
        flow[a, b] = program.variable(0, 0, most)
        program.row([(flow[a, b], 1), (used, -most)], high=0)
        program.row([(flow[a, b], 1), (used, -least)], low=0)
    for b in items:
        into = [(flow[a, c], 1) for a, c in flow if c == b]
        program.row(into + [(flow[c, a], -1) for c, a in flow if c == b], 1, 1)
        program.row(into + [(place[b], 1)], count + 1, count + 1)
    for a in items:
        for b in items:
            if a == b:
                continue
            if before(a, b):
                program.row([(place[b], 1), (place[a], -1)], low=1)
                continue
            terms = {place[a]: 1, place[b]: -1}
            if (a, b) in x and not before(b, a):
                terms[x[a, b]] = count
                if (b, a) in x:
                    terms[x[b, a]] = count - 2
                program.row(terms, high=count - 1)


def _precedence(program, x, items, before, earliest, latest):
    y = {}
    for a in items:
        for b in items:
            if a < b:
                low = 1 if before(a, b) else 0
                high = 0 if before(b, a) else 1
                y[a, b] = program.variable(0, low, high)

    def add(terms, a, b, factor):
        """factor * y[a, b]; what is constant in it."""
        if a < b:
            terms[y[a, b]] = terms.get(y[a, b], 0) + factor
            return 0
        terms[y[b, a]] = terms.get(y[b, a], 0) - factor
        return factor

    for (a, b), used in x.items():
        if a and b:
            terms = {used: 1}
            constant = add(terms, a, b, -1)
            program.row(terms, high=-constant)
    for a in items:
        for b in items:
            for c in items:
                if len({a, b, c}) < 3 or before(b, a) or before(c, b) or before(a, c):
                    continue
                terms = {}
                constant = add(terms, a, b, 1) + add(terms, b, c, 1) + add(terms, c, a, 1)
                if (b, a) in x:
                    terms[x[b, a]] = 1
                program.row(terms, high=2 - constant)


def order_of(x, values):
    """The items in the order that the values of a solution say; None when they say none."""
    after = {a: b for (a, b), at in x.items() if values.get(at, 0) > 0.5}
    order, node = [], after.get(0)
    while node and len(order) <= len(after):
        order.append(node)
        node = after.get(node)
    return order if node == 0 else None
