"""What is compared, how near it must come, and why. Each row is one quantity of one check."""

from dataclasses import dataclass


@dataclass(frozen=True)
class Row:
    """How near a quantity must come: within `most`, in its unit or relative to what is expected, or within `least` in its unit."""

    name: str
    most: float
    relative: bool
    why: str
    least: float = 0.0

    def off(self, expected, got):
        """Returns the difference over what is allowed: 1 and less is near enough."""
        allowed = max(self.most * (abs(expected) if self.relative else 1.0), self.least)
        return abs(got - expected) / allowed

    def difference(self, expected, got):
        """Returns the difference as it is told: in per cent, or in the unit."""
        return 100.0 * abs(got - expected) / abs(expected) if self.relative and expected else abs(got - expected)


GRID = "the rings and steps of the program, which are chosen to be quick; ours are carried on to infinitely fine ones"
SAME = "the same equations, solved exactly there and stepped here to a millionth"

ROWS = {
    row.name: row
    for row in (
        Row("drying: moisture", 0.005, True, GRID + "; 0.25 of a per cent in the first days of a large or a dry cheese, whose dry skin is thin against the rings", 0.25),
        Row("drying: moisture at the centre", 0.01, True, GRID + "; one place errs more than the mean", 0.15),
        Row("drying: water activity", 0.004, False, "follows from the moisture; steepest where a cheese is dry"),
        Row("drying: temperature, °C", 0.5, False, "while the skin dries in the first hour it feels the rings most"),
        Row("drying: diameter", 0.002, True, "a third of what the volume errs"),
        Row("fine drying: moisture", 0.0025, True, "finer rings; 0.12 of a per cent in the first days of a large or a dry cheese", 0.12),
        Row("fine drying: moisture at the centre", 0.0025, True, "as above", 0.03),
        Row("vinegar: pH at the centre", 0.1, False, "beside what it is 8 % earlier or later: rings smear the front, whose first fall comes early"),
        Row("vinegar: pH, blended", 0.03, False, "0.02 of a usual cheese, which the program says; here of any size and dryness"),
        Row("vinegar: pH of the vinegar", 0.06, False, "as above; the vinegar feels the skin of a large or a dry cheese at once"),
        Row("vinegar: acid in the cheese, %", 0.02, True, GRID, 0.01),
        Row("vinegar: equilibrium pH", 1e-6, False, "an equation in one unknown on both sides"),
        Row("fine vinegar: pH at the centre", 0.02, False, "finer rings; beside what it is 1 % earlier or later"),
        Row("fine vinegar: pH, blended", 0.005, False, "finer rings"),
        Row("fine vinegar: pH of the vinegar", 0.005, False, "finer rings"),
        Row("warming: minutes to the calcium", 1e-5, True, SAME, 1e-5),
        Row("warming: minutes to the rennet", 1e-5, True, SAME, 1e-5),
        Row("warming: energy, kWh", 1e-5, True, SAME, 1e-6),
        Row("warming: whether it comes so far", 0.0, False, "yes or no", 0.5),
        Row("air: humidity of warmed air, by psychrolib, %", 2e-6, True, "the same law of saturation (Hyland and Wexler)", 1e-6),
        Row("air: humidity of warmed air, by CoolProp, %", 0.004, True, "air as a real gas: 0.4 % more vapour at saturation", 0.05),
        Row("growth: rate, 1/h", 1e-9, True, "closed forms on both sides", 1e-12),
        Row("growth: yeast, 1/h", 1e-9, True, "closed forms on both sides", 1e-12),
        Row("growth: mould, mm/d", 1e-9, True, "closed forms on both sides", 1e-12),
        Row("growth: dose along a history", 2e-3, True, "Simpson's rule there, steps here; a germ may begin or stop between two rows", 1e-3),
        Row("growth: tenfold steps, free of lag", 2e-3, True, "as above", 2e-4),
        Row("growth: tenfold steps, with a lag", 3e-3, True, "as above; a lag feels the dose more", 2e-4),
        Row("spread: least and most of a figure", 1e-6, True, "the same trial runs one by one, sorted here; printed numbers have lost their last digit", 1e-6),
    )
}
