"""The cheapest order as a mixed-integer program, for solvers that go by linear relaxation.

Nodes are the items and 0, where the order begins and ends. A binary x[a, b] for each way that an order can use says that
b stands right behind a; each node is left once and come to once.

What makes one order of that is y[a, b], for each pair of items: a comes somewhere before b. It need not be asked to be
whole. x[a, b] <= y[a, b]; y[a, b] + y[b, a] = 1; and no three items go round, y[a, b] + y[b, c] + y[c, a] <= 2, where
x[b, a] is added on the left, since it and one of the first two exclude each other (the lifted precedence formulation of
Sarin, Sherali and Bhootra 2005). Precedences fix y, and leave out each x that they exclude. On these problems a single
commodity flow with lifted subtour rows and places as variables was far weaker: at 12 items it took three to ten times
as long, and at 20 its bounds were lower after the same time.
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


def program_of(instance):
    """The program, and what x[a, b] is called in it: {(a, b): variable}. Items are numbered from 1."""
    count = instance["items"]
    items = range(1, count + 1)
    nodes = range(0, count + 1)

    def before(a, b):
        return instance["before"][a - 1][b - 1]

    def follows(a, b):
        if a == b:
            return False
        if a == 0:
            return not any(before(c, b) for c in items)
        if b == 0:
            return not any(before(a, c) for c in items)
        return not before(b, a) and not any(before(a, c) and before(c, b) for c in items)

    def way(a, b):
        return 0 if b == 0 else instance["first"][b - 1] if a == 0 else instance["ways"][a - 1][b - 1]

    program = Program()
    x = {(a, b): program.variable(way(a, b), whole=True) for a in nodes for b in nodes if follows(a, b)}
    for a in nodes:
        program.row({x[a, b]: 1 for b in nodes if (a, b) in x}, 1, 1)
        program.row({x[b, a]: 1 for b in nodes if (b, a) in x}, 1, 1)
    y = {}  # of a < b alone; the other way round it is what is missing to 1
    for a in items:
        for b in range(a + 1, count + 1):
            y[a, b] = program.variable(0, int(before(a, b)), int(not before(b, a)))

    def at_most(limit, pairs, ways):
        """The sum of y over the pairs, and of the ways, is at most this."""
        terms = {x[way]: 1 for way in ways if way in x}
        for a, b in pairs:
            if a < b:
                terms[y[a, b]] = terms.get(y[a, b], 0) + 1
            else:
                terms[y[b, a]] = terms.get(y[b, a], 0) - 1
                limit -= 1
        program.row(terms, high=limit)

    for a, b in x:
        if a and b:
            at_most(1, [(b, a)], [(a, b)])
    for a in items:
        for b in items:
            for c in items:
                if len({a, b, c}) == 3 and not (before(b, a) or before(c, b) or before(a, c)):
                    at_most(2, [(a, b), (b, c), (c, a)], [(b, a)])
    return program, x


def order_of(x, values):
    """The items in the order that the values of a solution say; None when they say none."""
    after = {a: b for (a, b), at in x.items() if values.get(at, 0) > 0.5}
    order, node = [], after.get(0)
    while node and len(order) <= len(after):
        order.append(node)
        node = after.get(node)
    return order if node == 0 else None
