"""A disc of cheese in vinegar, by the method of lines: acetate and titratable protons in rings, SciPy's BDF in time.

At each place acid, acetate, hydrogen ions and the buffer of the cheese are in equilibrium; the bath is stirred and finite. Each face has the still film
and half a ring before it, in series.
"""

import air
import numpy
import scipy.sparse
from cheese import Cheese
from disc import Disc
from scipy.integrate import solve_ivp
from scipy.optimize import brentq

ACETIC_KG_MOL = 0.060052
LN10 = numpy.log(10.0)
# mol per kg of protein, and per kg of water; pK; steepness.
PROTEIN_GROUPS = ((1.05, 4.50, 1.0), (0.19, 6.40, 1.0), (0.255, 6.00, 1.0), (0.56, 5.10, 2.0), (0.10, 3.00, 1.0))
WATER_GROUPS = ((0.010, 5.70, 1.0), (0.010, 4.40, 1.0), (0.011, 6.60, 1.0))
USUAL = {"acid_obstruction": 0.33, "acetate_mobility": 0.9, "acid_pk": 4.65, "buffer": 1.0, "acid_film": 2.0e-6}


def acid_in_water_m2_s(temperature_c):
    """Returns the diffusivity of acetic acid in water: 1.21e-9 m²/s at 25 °C, and D μ/T the same elsewhere."""
    viscosity = lambda c: 2.414e-5 * 10.0 ** (247.8 / (c + air.ZERO_C - 140.0))
    return 1.21e-9 * (temperature_c + air.ZERO_C) / 298.15 * viscosity(25.0) / viscosity(temperature_c)


def water_kg_m3(temperature_c):
    """Returns the density of water in food."""
    return 997.18 + 3.1439e-3 * temperature_c - 3.7574e-3 * temperature_c**2


class Soak:
    """One cheese in its share of the vinegar."""

    def __init__(self, choices, constants, rings, first_h=6.0):
        """`first_h`: the first hour that is looked at: how thin the sour skin is then, the rings must follow."""
        constants = {**USUAL, **constants}
        parts = ("moisture_percent", "protein_percent", "carbohydrate_percent", "ash_percent", "salt_percent")
        parts = {key: choices[key] for key in parts}
        parts["fat_percent"] = 100.0 - sum(parts.values())
        self.cheese_kg_m3 = Cheese(parts).fresh_kg_m3()
        temperature_c, water = choices["pickling_temperature_c"], 0.01 * parts["moisture_percent"]
        self.share = water * self.cheese_kg_m3 / water_kg_m3(temperature_c)
        scale = constants["acid_obstruction"] * choices["diffusivity_scale"]
        self.acid_m2_s = scale * self.share * acid_in_water_m2_s(temperature_c)
        self.acetate_m2_s = constants["acetate_mobility"] * self.acid_m2_s
        self.pk, self.film = constants["acid_pk"], constants["acid_film"]
        self.strength = 1e4 * 1e-3 * choices["acid_g_per_100ml"] / ACETIC_KG_MOL
        times = constants["buffer"] * choices["buffer_scale"]
        protein = 0.01 * parts["protein_percent"]
        self.groups = [(times * protein * n, pk, steep) for n, pk, steep in PROTEIN_GROUPS]
        self.groups += [(times * water * n, pk, steep) for n, pk, steep in WATER_GROUPS]
        self.start_ph = choices["start_ph"]
        self.disc = Disc(5e-4 * choices["diameter_mm"], 1e-3 * choices["thickness_mm"], rings, rings, False, self.skin_m(first_h) * 1.6 / rings)
        # Half of the vinegar belongs to the upper half.
        self.bath_m3 = 0.5e-6 * choices["vinegar_ml"]
        faces = (self.disc.top, self.disc.side)
        self.ring, self.area, self.before = (numpy.concatenate([face[part] for face in faces]) for part in range(3))
        self.guess = None

    def skin_m(self, hour):
        """Returns how deep acid has gone."""
        return float(numpy.sqrt(self.acid_m2_s * 3600.0 * hour))

    def held(self, ph):
        """Returns the hydrogen ions that the cheese has taken up, mol per kg, and the slope with pH."""
        total, slope = numpy.zeros_like(ph), numpy.zeros_like(ph)
        for amount, pk, steep in self.groups:
            on = 1.0 / (1.0 + 10.0 ** (steep * (ph - pk)))
            at_start = 1.0 / (1.0 + 10.0 ** (steep * (self.start_ph - pk)))
            total = total + amount * (on - at_start)
            slope = slope - amount * steep * LN10 * on * (1.0 - on)
        return total, slope

    def ph(self, acetate, protons, guess, buffered):
        """Returns the pH at which acid, hydrogen ions and buffer hold the protons, by Newton's rule within bounds."""
        low, high, ph = numpy.full_like(acetate, -0.5), numpy.full_like(acetate, 9.5), numpy.array(guess, dtype=float)
        per_water = self.cheese_kg_m3 / self.share if buffered else 0.0
        for _ in range(100):
            split = 1.0 / (1.0 + 10.0 ** (self.pk - ph))
            ions = 10.0 ** (3.0 - ph)
            total, slope = self.held(ph)
            excess = acetate * (1.0 - split) + ions + per_water * total - protons
            low, high = numpy.where(excess > 0, ph, low), numpy.where(excess > 0, high, ph)
            new = ph - excess / (-LN10 * (acetate * split * (1.0 - split) + ions) + per_water * slope)
            settled = numpy.abs(new - ph) < 1e-10
            if settled.all():
                return new
            # What has settled is left alone: rounding may put it on its own bound.
            ph = numpy.where(~settled & ((new <= low) | (new >= high)), 0.5 * (low + high), new)
        return ph

    def species(self, acetate, protons, guess, buffered):
        """Returns pH, acid, acetate ions and hydrogen ions, and the slopes of these three with acetate and with protons."""
        ph = self.ph(acetate, protons, guess, buffered)
        split = 1.0 / (1.0 + 10.0 ** (self.pk - ph))
        ions = 10.0 ** (3.0 - ph)
        per_water = self.cheese_kg_m3 / self.share if buffered else 0.0
        acid_slope, ion_slope = -LN10 * acetate * split * (1.0 - split), -LN10 * ions
        whole = acid_slope + ion_slope + per_water * self.held(ph)[1]
        with_acetate, with_protons = -(1.0 - split) / whole, 1.0 / whole
        slopes = (
            (1.0 - split + acid_slope * with_acetate, acid_slope * with_protons),
            (split - acid_slope * with_acetate, -acid_slope * with_protons),
            (ion_slope * with_acetate, ion_slope * with_protons),
        )
        return ph, (acetate * (1.0 - split), acetate * split, ions), slopes

    def system(self, y, jacobian):
        """Returns the rates, or their Jacobian."""
        count = len(self.disc.volume)
        if self.guess is None:
            self.guess = (numpy.full(count, self.start_ph), numpy.array([2.4]))
        inside, bath = (y[:count], y[count : 2 * count]), (y[2 * count : 2 * count + 1], y[2 * count + 1 :])
        ph, here, slopes = self.species(*inside, self.guess[0], True)
        bath_ph, there, bath_slopes = self.species(*bath, self.guess[1], False)
        self.guess = (ph, bath_ph)
        moves = (self.acid_m2_s, self.acetate_m2_s, self.acid_m2_s)
        through = [self.area / (1.0 / self.film + self.before / (self.share * d)) for d in moves]
        water = self.share * self.disc.volume
        # Acetate is acid and acetate ions; protons are acid and hydrogen ions.
        carried = ((0, 1), (0, 2))
        if not jacobian:
            rates, into_bath = [], []
            for kinds in carried:
                rate, lost = numpy.zeros(count), 0.0
                for kind in kinds:
                    rate += self.share * moves[kind] * (self.disc.flow @ here[kind])
                    enters = through[kind] * (there[kind] - here[kind][self.ring])
                    numpy.add.at(rate, self.ring, enters)
                    lost += enters.sum()
                rates.append(rate / water)
                into_bath.append(-lost / self.bath_m3)
            return numpy.concatenate((*rates, into_bath))
        blocks = [[None] * 3 for _ in range(3)]
        corner = numpy.zeros((2, 2))
        columns, rows = numpy.zeros((2, count, 2)), numpy.zeros((2, 2, count))
        for which, kinds in enumerate(carried):
            for amount in range(2):
                block = scipy.sparse.csr_matrix((count, count))
                for kind in kinds:
                    slope, bath_slope = slopes[kind][amount], float(bath_slopes[kind][amount][0])
                    face = numpy.bincount(self.ring, through[kind], count)
                    block = block + self.share * moves[kind] * (self.disc.flow @ scipy.sparse.diags(slope)) - scipy.sparse.diags(face * slope)
                    columns[which, :, amount] += face * bath_slope / water
                    rows[amount, which] += face * slope / self.bath_m3
                    corner[which, amount] -= face.sum() * bath_slope / self.bath_m3
                blocks[which][amount] = scipy.sparse.diags(1.0 / water) @ block
            blocks[which][2] = scipy.sparse.csr_matrix(columns[which])
        blocks[2] = [scipy.sparse.csr_matrix(rows[0]), scipy.sparse.csr_matrix(rows[1]), scipy.sparse.csr_matrix(corner)]
        return scipy.sparse.bmat(blocks, format="csc")

    def run(self, hours):
        """Returns what cheese and vinegar are at each hour."""
        count = len(self.disc.volume)
        y = numpy.concatenate((numpy.zeros(count), numpy.full(count, 10.0 ** (3.0 - self.start_ph)), [self.strength, self.strength]))
        solved = solve_ivp(
            lambda _, y: self.system(y, False), (0.0, 3600.0 * hours[-1]), y, method="BDF",
            t_eval=[3600.0 * hour for hour in hours], jac=lambda _, y: self.system(y, True), rtol=1e-6, atol=1e-5, first_step=1e-2,
        )
        if not solved.success:
            raise RuntimeError(solved.message)
        return [self.point(hour, solved.y[:, at]) for at, hour in enumerate(hours)]

    def point(self, hour, y):
        """Returns what the program reports at an hour."""
        count = len(self.disc.volume)
        acetate, protons = y[:count], y[count : 2 * count]
        means = numpy.array([self.disc.mean(acetate)]), numpy.array([self.disc.mean(protons)])
        return {
            "at_h": hour,
            "centre_ph": self.disc.centre(self.ph(acetate, protons, numpy.full(count, 5.0), True)),
            "slurry_ph": float(self.ph(*means, numpy.array([5.0]), True)[0]),
            "bath_ph": float(self.ph(y[-2:-1], y[-1:], numpy.array([2.4]), False)[0]),
            "acid_percent": 100.0 * float(means[0][0]) * self.share * ACETIC_KG_MOL / self.cheese_kg_m3,
        }

    def equilibrium_ph(self):
        """Returns the pH at which acetate balances what the cheese took up and the hydrogen ions of all the liquid."""
        cheese_m3 = self.disc.volume.sum()
        acid, liquid, mass = self.strength * self.bath_m3, self.bath_m3 + self.share * cheese_m3, self.cheese_kg_m3 * cheese_m3

        def charge(ph):
            return acid / (1.0 + 10.0 ** (self.pk - ph)) - mass * float(self.held(numpy.array(ph))[0]) - liquid * 10.0 ** (3.0 - ph)

        return brentq(charge, 0.5, 9.0, xtol=1e-12)
