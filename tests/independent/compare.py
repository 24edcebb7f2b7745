"""The comparisons: each draws a design, asks the program, calculates for itself, and yields what is expected and what was got."""

import air
import draw
import growth
import numpy
from drying import Drying
from soak import Soak
from warming import Warming

DRYING = ("moisture_diffusivity", "diffusion_energy", "air_transfer", "solids_hold", "radiation")
SOAK = ("acid_obstruction", "acetate_mobility", "acid_pk", "buffer", "acid_film")


def _finer(model, rings):
    """Returns points carried on to infinitely fine rings: errors fall with the square of the rings (Richardson)."""
    coarse, fine = model(rings[0]), model(rings[1])
    share = rings[0] ** 2 / (rings[1] ** 2 - rings[0] ** 2)
    return [
        {key: two[key] + (0.0 if key == "at_h" else share * (two[key] - one[key])) for key in two} for one, two in zip(coarse, fine)
    ]


def _hours(hours):
    return ",".join(f"{hour:g}" for hour in hours)


def drying(random, program, ranges):
    """One described cheese in a cabinet or in the open air."""
    inputs, described = ranges["inputs"], ranges["described_cheese"]
    choices = {**draw.cheese(random, described)}
    keys = ("diameter_mm", "thickness_mm", "start_temperature_c", "top_open_percent", "side_open_percent", "coat_s_m")
    choices.update(draw.all_of(random, described, keys))
    keys = ("cabinet_temperature_c", "room_air_temperature_c", "room_humidity_percent", "day_temperature_c", "day_humidity_percent")
    keys += ("night_temperature_c", "night_humidity_percent", "day_h", "air_speed_m_s", "underside_open_percent")
    choices.update(draw.all_of(random, inputs, keys))
    choices["drying_place"] = str(random.choice(["cabinet", "cabinet", "open_air"]))
    constants = draw.constants(random, ranges["parameters"], DRYING)
    hours = [6.0, 24.0, 72.0] + ([240.0] if choices["drying_place"] == "cabinet" else [])
    mine = _finer(lambda rings: Drying(choices, constants, rings).run(hours), (10, 16))
    for prefix, fine in (("drying", False), ("fine drying", True)):
        _, said = program.stage("drying", {**choices, "report_h": _hours(hours)}, constants, fine)
        for expected, got in zip(mine, said["points"]):
            yield f"{prefix}: moisture", expected["moisture_percent"], got["moisture_percent"], (choices, constants, expected["at_h"])
            yield f"{prefix}: moisture at the centre", expected["centre_moisture_percent"], got["centre_moisture_percent"], (choices, constants, expected["at_h"])
            if not fine:
                yield "drying: water activity", expected["water_activity"], got["water_activity"], (choices, constants, expected["at_h"])
                yield "drying: temperature, °C", expected["temperature_c"], got["temperature_c"], (choices, constants, expected["at_h"])
                yield "drying: diameter", expected["diameter_mm"], got["diameter_mm"], (choices, constants, expected["at_h"])


def vinegar(random, program, ranges):
    """One described cheese in its vinegar, from 6 h on, and from when the acid has gone a tenth of the way to the centre: the skin before that is
    thinner than a ring in a large or a dry cheese, and no maker asks for it."""
    described = ranges["described_pickling"]
    choices = draw.cheese(random, described)
    del choices["fat_percent"]
    keys = ("diameter_mm", "thickness_mm", "start_ph", "acid_g_per_100ml", "pickling_temperature_c")
    choices.update(draw.all_of(random, described, keys))
    choices.update(buffer_scale=1.0, diffusivity_scale=1.0)
    constants = draw.constants(random, ranges["parameters"], SOAK)
    volume_ml = numpy.pi * (0.05 * choices["diameter_mm"]) ** 2 * 0.1 * choices["thickness_mm"]
    least, most = described["vinegar_ml"]
    choices["vinegar_ml"] = float(f"{min(max(volume_ml * draw.evenly(random, 0.5, 12.0), least), most):.4g}")
    model = Soak(choices, constants, 8)
    nearest_m = 0.5e-3 * min(choices["diameter_mm"], choices["thickness_mm"])
    hours = [hour for hour in (6.0, 24.0, 96.0, 336.0, 1000.0) if model.skin_m(hour) > 0.1 * nearest_m]
    if not hours:
        return
    # A little before and after each as well: where the pH falls steeply it is the hour that errs.
    asked = sorted({hour * (1.0 + by) for hour in hours for by in (-0.08, -0.01, 0.0, 0.01, 0.08)})
    mine = {round(point["at_h"], 6): point for point in _finer(lambda rings: Soak(choices, constants, rings, hours[0]).run(asked), (16, 26))}
    for prefix, fine, late in (("vinegar", False, 0.08), ("fine vinegar", True, 0.01)):
        _, said = program.stage("pickling", {**choices, "report_h": _hours(hours)}, constants, fine)
        if not fine:
            yield "vinegar: equilibrium pH", model.equilibrium_ph(), said["equilibrium_ph"], (choices, constants)
        for got in said["points"]:
            before, expected, after = (mine[round(got["at_h"] * (1.0 + by), 6)] for by in (-late, 0.0, late))
            where = (choices, constants, got["at_h"])
            near = sorted((before["centre_ph"], expected["centre_ph"], after["centre_ph"]))
            yield f"{prefix}: pH at the centre", min(max(got["centre_ph"], near[0]), near[2]), got["centre_ph"], where
            yield f"{prefix}: pH, blended", expected["slurry_ph"], got["slurry_ph"], where
            yield f"{prefix}: pH of the vinegar", expected["bath_ph"], got["bath_ph"], where
            if not fine:
                yield "vinegar: acid in the cheese, %", expected["acid_percent"], got["acid_percent"], where


def warming(random, program, ranges):
    """The milk of a vat from the fridge to the rennet."""
    inputs = ranges["inputs"]
    milk_choices = draw.all_of(random, inputs, ("milk_l", "fridge_temperature_c"))
    keys = ("bath_l", "bath_start_temperature_c", "bath_set_temperature_c", "heater_power_w", "room_temperature_c", "pot_depth_percent")
    choices = {**milk_choices, **draw.all_of(random, inputs, (*keys, "calcium_temperature_c", "rennet_temperature_c"))}
    for key, names in (
        ("heating", ("bath", "bath", "double_boiler", "hob")), ("pot_rest", ("rack", "floor")), ("bath_lid", ("yes", "no")), ("pot_lid", ("yes", "no")),
    ):
        choices[key] = str(random.choice(names))
    constants = draw.constants(random, ranges["parameters"], ("milk_side", "bath_side", "power_reaches"))
    _, milk = program.stage("milk", milk_choices)
    failure, said = program.stage("vat", choices, constants)
    mine = Warming(choices, milk, constants).run()
    # Milk that is warm enough may yet be too hot or too cold to set; how the stage ends then is not compared.
    yield "warming: whether it comes so far", float(mine is not None), float("does not reach" not in failure), (choices, constants)
    if mine is not None and not failure:
        for key, name in (("to_calcium_min", "minutes to the calcium"), ("to_rennet_min", "minutes to the rennet"), ("energy_kwh", "energy, kWh")):
            yield f"warming: {name}", float(mine[key]), said[key], (choices, constants)


def moist_air(random, program, ranges):
    """The air of a cabinet that draws in the air of a room."""
    inputs = ranges["inputs"]
    keys = ("cabinet_temperature_c", "room_air_temperature_c", "room_humidity_percent")
    choices = draw.all_of(random, inputs, keys)
    choices["cabinet_temperature_c"] = max(choices["cabinet_temperature_c"], choices["room_air_temperature_c"])
    sets = [word for key, value in choices.items() for word in ("--set", f"{key}={value}")]
    _, said = program.run("figures", program.example, "--set", "drying_h=1", "--set", "pickled=no", *sets)
    got = said["drying"]["air_humidity_percent"]
    here = (choices["room_air_temperature_c"], 0.01 * choices["room_humidity_percent"], choices["cabinet_temperature_c"])
    yield "air: humidity of warmed air, by psychrolib, %", 100.0 * air.warmed_by_psychrolib(*here), got, choices
    yield "air: humidity of warmed air, by CoolProp, %", 100.0 * air.warmed_by_coolprop(*here), got, choices


def germs(random, program, ranges):
    """One place, and one history."""
    organism = str(random.choice(list(growth.GERMS)))
    place = [random.uniform(-2, 45), random.uniform(4.2, 7.0), random.uniform(0.85, 1.0), random.uniform(0, 60), random.choice([0, 20.0])]
    keys = ("temperature_c", "ph", "water_activity", "lactic_mm", "acetic_mm")
    place = [float(f"{value:.6f}") for value in place]
    choices = {"organism": organism, **dict(zip(keys, place))}
    _, said = program.stage("germs", choices)
    yield "growth: rate, 1/h", growth.rate(organism, place), said["rate_per_h"], choices
    mild = [random.uniform(2, 20), random.uniform(4.2, 6.9), random.uniform(0.951, 0.993)]
    _, said = program.stage("germs", {"organism": "yeast", **dict(zip(keys, mild))})
    yield "growth: yeast, 1/h", growth.yeast(mild), said["rate_per_h"], mild
    _, said = program.stage("germs", {"organism": "mould", "temperature_c": mild[0], "water_activity": mild[2]})
    yield "growth: mould, mm/d", growth.mould_mm_per_day(mild[0], mild[2]), said["radius_mm_per_day"], mild
    rows, hour = [], 0.0
    for _ in range(int(random.integers(2, 6))):
        values = (hour, random.uniform(2, 42), random.uniform(4.5, 6.8), random.uniform(0.94, 0.995), random.uniform(0, 40), random.choice([0, 10.0]))
        rows.append(tuple(float(f"{value:.6f}") for value in values))
        hour += random.uniform(0.5, 40.0)
    organism = str(random.choice([one for one in growth.GERMS if one != "listeria_low"]))
    lag, start_log = round(random.uniform(0.0, 4.0), 2), round(random.uniform(0.0, 4.0), 1)
    starter = (6.5, round(random.uniform(0.2, 1.0), 2), 1.5e9) if random.uniform() < 0.5 else None
    choices = {"organism": organism, "history": "|".join(":".join(str(value) for value in row) for row in rows), "h0": lag, "start_log": start_log}
    if starter:
        choices["starter"] = ";".join(str(part) for part in starter)
    _, said = program.stage("germs", choices)
    dose, free = growth.along(organism, rows, 0.0, start_log, starter)
    yield "growth: dose along a history", float(dose), said["dose"], choices
    yield "growth: tenfold steps, free of lag", float(free), said["increase_log10"], choices
    yield "growth: tenfold steps, with a lag", float(growth.along(organism, rows, lag, start_log, starter)[1]), said["increase_with_lag_log10"], choices


def spread(_, program, __):
    """The likely range of every figure, by the trial runs one at a time."""
    draws = 10
    _, whole = program.run("spread", program.example, "--draws", str(draws), "--trials")
    runs = []
    for trial in whole["trials"]:
        words = [word for key, value in trial.items() for word in ("--parameter", f"{key}={value!r}")]
        _, said = program.run("figures", program.example, *words)
        runs.append({key: value for stage in said.values() if isinstance(stage, dict) for key, value in stage.items()})
    for key, told in whole["figures"].items():
        numbers = [run[key] for run in runs if isinstance(run.get(key), float)]
        if told["least"] is None or told["most"] is None or len(numbers) < draws:
            continue
        for share, got in ((0.1, told["least"]), (0.9, told["most"])):
            yield "spread: least and most of a figure", float(numpy.quantile(numbers, share)), got, key


CHECKS = {"air": moist_air, "drying": drying, "vinegar": vinegar, "warming": warming, "growth": germs}
