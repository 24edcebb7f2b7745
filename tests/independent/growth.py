"""How fast germs could grow, and how far along a history: rates by the notes' tables, numbers stepped by SciPy.

For Listeria, S. aureus, Salmonella, E. coli, B. cereus, the cold type of C. botulinum, yeasts and mould. The two whole models of chilled food are
held to their published code by `tests/reference/germs.csv`, not here.
"""

import numpy
from scipy.integrate import solve_ivp

LN10 = numpy.log(10.0)
# Temperature, pH, water activity (form, values), best rate, inhibiting lactic and acetic acid, greatest log10, lag work.
GERMS = {
    "listeria": ((-1.72, 37, 45.5), (4.26, 7.1, 9.61), ("one", 0.913, 0.997), 0.742, 3.79, 10.3, 8.0, 2.0),
    "staphylococcus": ((7.7, 40.6, 46.7), (4.0, 7.0, 9.8), ("two", 0.808, 0.994), 1.97, 30.0, 15.0, 8.5, 2.3),
    "salmonella": ((6.24, 38.37, 47.97), (3.84, 6.47, 14.1), ("square", 0.939, 0.992), 1.195, 11.0, 14.0, 8.5, 2.0),
    "coli": ((6.81, 40.97, 45.16), (4.0, 6.49, 8.98), ("two", 0.941, 0.998), 2.3, 11.0, 14.0, 8.5, 2.0),
    "cereus": ((0.0, 37, 46.8), (4.9, 6.5, 8.1), ("line", 0.95, 1.0), 2.0, 4.0, 9.0, 7.0, 3.0),
    "cold_botulinum": ((-2.9, 25.4, 29), (5.0, 7, 9), ("line", 0.965, 1.0), 0.3, None, None, 8.0, 0.0),
    "listeria_low": ((-1.72, 37, 45.5), (4.26, 7.1, 9.61), ("one", 0.913, 0.997), 0.742, 1.76, 5.83, 8.0, 2.0),
}


def cardinal(x, least, best, most, power):
    """Returns Rosso's factor: 0 at the ends, 1 at the best."""
    if not least < x < most:
        return 0.0
    below = (best - least) * (x - best) - (best - most) * ((power - 1) * best + least - power * x)
    return (x - most) * (x - least) ** power / ((best - least) ** (power - 1) * below)


def undissociated(total, ph, pk):
    """Returns what of an acid is not split."""
    return total / (1.0 + 10.0 ** (ph - pk))


def rate(organism, at):
    """Returns the rate of growth, ln per hour, at (°C, pH, water activity, lactic, acetic)."""
    warm, ph, water, lactic, acetic = at
    degrees, acidity, (form, dry, wet), best, most_lactic, most_acetic, _, _ = GERMS[organism]
    low, at_best, high = degrees
    if organism == "cereus":
        # The square, level above the best and none from the greatest.
        by_warmth = min(((warm - low) / (at_best - low)) ** 2, 1.0) if low < warm < high else 0.0
    else:
        by_warmth = cardinal(warm, *degrees, 2)
    if organism == "cold_botulinum" and warm < 3.0:
        by_warmth = 0.0
    # On the far side of the best, where no cheese comes, what the fit says is not used for Salmonella.
    by_ph = 1.0 if organism == "salmonella" and ph > acidity[1] else cardinal(ph, *acidity, 1)
    distant = {"one": lambda: cardinal(water, dry, wet, 1.0, 1), "two": lambda: cardinal(water, dry, wet, 1.0, 2)}
    distant["square"] = lambda: min(max(water - dry, 0.0) / (wet - dry), 1.0) ** 2
    distant["line"] = lambda: max(water - dry, 0.0) / (1.0 - dry)
    by_water = distant[form]()
    acids = 1.0
    if most_lactic is not None:
        acids *= max(1.0 - undissociated(lactic, ph, 3.86) / most_lactic, 0.0)
        acids *= max(1.0 - numpy.sqrt(undissociated(acetic, ph, 4.76) / most_acetic), 0.0)
    together = 1.0
    if organism.startswith("listeria"):
        far = [((b - x) / (b - m)) ** 3 for x, m, b in ((warm, low, at_best), (ph, *acidity[:2]), (water, dry, wet))]
        far = [min(max(one, 0.0), 1.0) for one in far] + [(1.0 - acids) ** 2]
        psi = 0.0
        for i, one in enumerate(far):
            others = numpy.prod([2.0] + [1.0 - other for j, other in enumerate(far) if j != i])
            psi += one / others if others > 0 else (numpy.inf if one > 0 else 0.0)
        together = 1.0 if psi <= 0.5 else max(2.0 * (1.0 - psi), 0.0)
    return best * by_warmth * by_ph * by_water * acids * together


def yeast(at):
    """Returns the rate of dairy yeasts, ln per hour."""
    warm, ph, water, *_ = at
    b = numpy.sqrt(1.0 - water)
    return float(numpy.exp(-6.001 + 0.2342 * warm + 14.12 * b - 0.003552 * warm**2 + 0.005554 * ph**2 - 76.68 * b**2))


def mould_mm_per_day(warm, water):
    """Returns how fast the radius of blue mould grows."""
    return 4.19 * cardinal(warm, -4.4, 23.9, 32.5, 2) * cardinal(water, 0.856, 0.981, 1.0, 2)


def along(organism, rows, lag, start_log, starter):
    """Returns ∫μ dt and the growth in tenfold steps, along rows of (hours, °C, pH, water activity, lactic, acetic).

    Baranyi and Roberts: dQ/dt = μ Q, dN/dt = Q/(1 + Q) μ N (1 − N/N_max), beside a starter times (1 − S/S_max).
    """
    hours = [row[0] for row in rows]
    most = 10.0 ** GERMS[organism][6]
    values = numpy.array([row[1:] for row in rows], dtype=float)

    def system(t, y):
        at = [numpy.interp(t, hours, values[:, column]) for column in range(values.shape[1])]
        mu = rate(organism, at)
        logarithm_q, grown, crowd = y[1:]
        free = 1.0 if lag == 0 else 1.0 / (1.0 + numpy.exp(-logarithm_q))
        room = 1.0 if start_log is None else 1.0 - 10.0**start_log * numpy.exp(grown) / most
        share = numpy.exp(crowd) / starter[2] if starter else 0.0
        return [mu, mu, free * mu * room * (1.0 - share), starter[1] * (1.0 - share) if starter else 0.0]

    q = -numpy.log(numpy.expm1(lag)) if lag > 0 else 0.0
    y, now = [0.0, q, 0.0, LN10 * starter[0] if starter else 0.0], hours[0]
    for end in hours[1:]:
        if end > now:
            solved = solve_ivp(system, (now, end), y, method="LSODA", rtol=1e-8, atol=1e-10, max_step=(end - now) / 200.0)
            y, now = solved.y[:, -1], end
    return y[0], y[2] / LN10
