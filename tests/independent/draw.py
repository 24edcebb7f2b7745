"""Draws designs over the whole range of each input."""

import numpy


def evenly(random, least, most):
    """Returns a number of four digits; where a range spans a factor of ten and more, small ones are as likely as great ones."""
    if least > 0 and most > 10 * least:
        number = numpy.exp(random.uniform(numpy.log(least), numpy.log(most)))
    else:
        number = random.uniform(least, most)
    return float(min(max(float(f"{number:.4g}"), least), most))


def all_of(random, ranges, keys):
    """Returns a number for each key."""
    return {key: evenly(random, *ranges[key]) for key in keys}


PARTS = ("fat_percent", "protein_percent", "carbohydrate_percent", "ash_percent", "salt_percent")


def cheese(random, ranges):
    """Returns the parts of a cheese that add up to 100 %, each within its range."""
    while True:
        water = evenly(random, *ranges["moisture_percent"])
        shares = random.dirichlet([2.0, 2.0, 0.4, 0.3, 0.4]) * (100.0 - water)
        parts = {"moisture_percent": water, **{key: round(float(share), 3) for key, share in zip(PARTS, shares)}}
        parts["moisture_percent"] = round(100.0 - sum(parts[key] for key in PARTS), 6)
        if all(ranges.get(key, (0, 100))[0] <= part <= ranges.get(key, (0, 100))[1] for key, part in parts.items()):
            return parts


def constants(random, ranges, keys):
    """Returns a value within the range of each constant, or, every other time, none: then those of the records count."""
    if random.uniform() < 0.5:
        return {}
    return {key: evenly(random, *ranges[key]) for key in keys}
