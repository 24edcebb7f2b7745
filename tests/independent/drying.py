"""A disc of cheese that dries, by the method of lines: rings in space, SciPy's BDF in time.

The equations are those of a shrinking disc with Kirchhoff's potential of its diffusivity and one temperature; each face is closed by itself, so that
what diffuses to it is what evaporates from it.
"""

import air
import numpy
import scipy.sparse
from cheese import WATER_KG_M3, Cheese
from disc import Disc
from scipy.integrate import solve_ivp

REFERENCE_C = 40.0
REFERENCE_WATER = 2.0 / 3.0
USUAL = {"moisture_diffusivity": 1.5e-10, "diffusion_energy": 50e3, "air_transfer": 1.0, "solids_hold": 0.10, "radiation": 5.0}


class Air:
    """The air that a cheese meets for some hours."""

    def __init__(self, temperature_c, vapour_pa, speed_m_s, diameter_m, times, coat_s_m):
        self.temperature_c, self.vapour_pa = temperature_c, vapour_pa
        heat, vapour = air.transfer(speed_m_s, diameter_m, temperature_c)
        self.heat = times * heat
        self.vapour_m_s = 1.0 / (1.0 / (times * vapour) + coat_s_m)


class Drying:
    """One disc in its air."""

    def __init__(self, choices, constants, rings):
        self.choices, self.constants = choices, {**USUAL, **constants}
        self.cheese = Cheese(choices)
        self.diameter_m, self.height_m = 1e-3 * choices["diameter_mm"], 1e-3 * choices["thickness_mm"]
        top, side, underside = (0.01 * choices[key] for key in ("top_open_percent", "side_open_percent", "underside_open_percent"))
        self.disc = Disc(0.5 * self.diameter_m, self.height_m, rings, 2 * rings, True)
        faces = [(face, share) for face, share in ((self.disc.top, top), (self.disc.side, side), (self.disc.underside, underside)) if share > 0]
        self.ring = numpy.concatenate([face[0] for face, _ in faces])
        # What is closed of a face lets nothing through; the open share of each ring has its own half ring before it.
        self.area = numpy.concatenate([share * face[1] for face, share in faces])
        self.full = numpy.concatenate([face[1] for face, _ in faces])
        self.before = numpy.concatenate([face[2] for face, _ in faces])
        self.mass = self.cheese.solids_in_fresh_kg_m3() * self.disc.volume
        self.c = 2.0 * WATER_KG_M3 / self.cheese.solids_kg_m3
        self.norm = (REFERENCE_WATER / (REFERENCE_WATER + self.c)) ** 2
        self.face_water = numpy.full(len(self.ring), self.cheese.start_water)

    def strength(self, water):
        """Returns the diffusivity over that of the reference (Mackie and Meares)."""
        return (water / (water + self.c)) ** 2 / self.norm

    def potential(self, water):
        """Returns Kirchhoff's potential, the integral of that."""
        c = self.c
        return (water - 2.0 * c * numpy.log1p(water / c) + c - c * c / (water + c)) / self.norm

    def activity(self, water):
        """Returns the water activity and its slope."""
        step = 1e-6 * numpy.maximum(water, 1e-4)
        a = [self.cheese.water_activity(water + by, self.constants["solids_hold"]) for by in (-step, 0.0, step)]
        return a[1], (a[2] - a[0]) / (2.0 * step)

    def conduct(self, temperature_c):
        """Returns diffusivity times dry solids."""
        absolute = temperature_c + air.ZERO_C
        d = self.constants["moisture_diffusivity"] * numpy.exp(
            -self.constants["diffusion_energy"] / air.GAS * (1.0 / absolute - 1.0 / (REFERENCE_C + air.ZERO_C))
        )
        return d * self.cheese.solids_in_fresh_kg_m3()

    def faces(self, inside, temperature_c, around, shrunk):
        """Returns what evaporates from each face per fresh area, and its slopes with the ring's water and with the temperature."""
        film = around.vapour_m_s * 0.01801528 / (air.GAS * (0.5 * (temperature_c + around.temperature_c) + air.ZERO_C))
        film = film * shrunk**2 * self.area / self.full
        here_pa = air.saturation_pa(temperature_c)
        here_slope = (air.saturation_pa(temperature_c + 0.01) - air.saturation_pa(temperature_c - 0.01)) / 0.02
        g = self.conduct(temperature_c) / shrunk**2 / self.before
        low, high = numpy.full(len(inside), 1e-10), numpy.maximum(inside, 1.0) + 20.0
        water = numpy.clip(self.face_water, 1e-9, high)
        behind = self.potential(inside)
        for _ in range(80):
            a, slope = self.activity(water)
            excess = g * (behind - self.potential(water)) - film * (a * here_pa - around.vapour_pa)
            low, high = numpy.where(excess > 0, water, low), numpy.where(excess > 0, high, water)
            step = excess / (g * self.strength(water) + film * slope * here_pa + 1e-300)
            new = water + step
            settled = numpy.abs(step) <= 1e-10 * water
            # What has settled is left alone: rounding may put it on its own bound.
            water = numpy.where(~settled & ((new <= low) | (new >= high)), numpy.sqrt(low * high), new)
            if settled.all():
                break
        self.face_water = water
        a, slope = self.activity(water)
        flux = film * (a * here_pa - around.vapour_pa)
        out, back = film * slope * here_pa, g * self.strength(water)
        share = back / (out + back + 1e-300)
        return flux, self.strength(inside) * g * (1.0 - share), share * film * a * here_slope

    def rates(self, y, around, slopes):
        """Returns the rates of all rings and of the temperature, or with `slopes` their Jacobian but for the mean's shrinkage."""
        water, temperature_c = numpy.maximum(y[:-1], 1e-9), float(y[-1])
        mean = self.disc.mean(water)
        shrunk = self.cheese.shrunk(mean)
        conduct = self.conduct(temperature_c) / shrunk**2
        flux, by_water, by_warmth = self.faces(water[self.ring], temperature_c, around, shrunk)
        potential_flow = self.disc.flow @ self.potential(water)
        heat = self.mass.sum() * (self.cheese.heat_j_kg_k + 4180.0 * mean)
        gains = shrunk**2 * self.area.sum() * (around.heat + self.constants["radiation"])
        latent = air.evaporation_j_kg(temperature_c)
        if not slopes:
            rate = conduct * potential_flow
            numpy.subtract.at(rate, self.ring, self.full * flux)
            warming = (gains * (around.temperature_c - temperature_c) - latent * (self.full @ flux)) / heat
            return numpy.append(rate / self.mass, warming)
        count = len(water)
        damp, cools, dries = numpy.zeros(count), numpy.zeros(count), numpy.zeros(count)
        numpy.add.at(damp, self.ring, self.full * by_water)
        numpy.add.at(cools, self.ring, self.full * by_warmth)
        per_kelvin = self.constants["diffusion_energy"] / air.GAS / (temperature_c + air.ZERO_C) ** 2
        dries = (conduct * per_kelvin * potential_flow - cools) / self.mass
        inside = scipy.sparse.diags(1.0 / self.mass) @ (
            conduct * self.disc.flow @ scipy.sparse.diags(self.strength(water)) - scipy.sparse.diags(damp)
        )
        last = -(gains + latent * (self.full @ by_warmth)) / heat
        return scipy.sparse.bmat([[inside, dries[:, None]], [(-latent * damp / heat)[None, :], numpy.array([[last]])]], format="csc")

    def airs(self):
        """Returns the air for each span of hours, day and night in turn where it is open."""
        choices, times = self.choices, self.constants["air_transfer"]
        meet = lambda c, pa: Air(c, pa, choices["air_speed_m_s"], self.diameter_m, times, choices["coat_s_m"])
        if choices["drying_place"] == "cabinet":
            humidity = air.warmed_by_psychrolib(choices["room_air_temperature_c"], 0.01 * choices["room_humidity_percent"], choices["cabinet_temperature_c"])
            warm_c = choices["cabinet_temperature_c"]
            yield 1e9, meet(warm_c, min(humidity, 1.0) * air.saturation_pa(warm_c))
            return
        day, night = (
            meet(choices[f"{part}_temperature_c"], 0.01 * choices[f"{part}_humidity_percent"] * air.saturation_pa(choices[f"{part}_temperature_c"]))
            for part in ("day", "night")
        )
        while True:
            yield choices["day_h"], day
            yield 24.0 - choices["day_h"], night

    def run(self, hours):
        """Returns what the cheese is at each hour."""
        y = numpy.append(numpy.full(len(self.disc.volume), self.cheese.start_water), self.choices["start_temperature_c"])
        now, points = 0.0, []
        for span, around in self.airs():
            end = min(now + span, hours[-1])
            asked = [hour for hour in hours if now < hour <= end]
            solved = solve_ivp(
                lambda _, y, around=around: self.rates(y, around, False),
                (3600.0 * now, 3600.0 * end), y, method="BDF", t_eval=sorted({*(3600.0 * hour for hour in asked), 3600.0 * end}),
                jac=lambda _, y, around=around: self.rates(y, around, True), rtol=1e-6, atol=1e-8,
            )
            if not solved.success:
                raise RuntimeError(solved.message)
            points += [self.point(hour, solved.y[:, at]) for at, hour in enumerate(asked)]
            y, now = solved.y[:, -1], end
            if now >= hours[-1]:
                return points
        return points

    def point(self, hour, y):
        """Returns what the program reports at an hour."""
        mean, centre = self.disc.mean(y[:-1]), self.disc.centre(y[:-1])
        start, shrunk = self.cheese.start_water, float(self.cheese.shrunk(mean))
        activity = lambda water: float(self.cheese.water_activity(water, self.constants["solids_hold"]))
        percent = lambda water: 100.0 * water / (1.0 + water)
        return {
            "at_h": hour,
            "moisture_percent": percent(mean),
            "centre_moisture_percent": percent(centre),
            "water_activity": activity(mean),
            "centre_water_activity": activity(centre),
            "loss_percent": 100.0 * (start - mean) / (1.0 + start),
            "temperature_c": float(y[-1]),
            "diameter_mm": 1e3 * self.diameter_m * shrunk,
            "thickness_mm": 1e3 * self.height_m * shrunk,
        }
