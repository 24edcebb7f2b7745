"""Milk that warms in a bath, over steam or on a hob: heat balances of pot and bath, stepped by SciPy's Runge-Kutta pair of order 8."""

import numpy
from scipy.integrate import solve_ivp

LONGEST_S = 6 * 3600.0
BAND_K = 0.5
STEAM_C = 100.0
WATER_HEAT = 4180.0
USUAL = {"milk_side": 430.0, "bath_side": 600.0, "power_reaches": 1.0}


class Warming:
    """Pot and bath of a design."""

    def __init__(self, choices, milk, constants):
        """`milk`: what `stage milk` says of the milk of the vat."""
        constants = {**USUAL, **constants}
        self.choices, self.milk = choices, milk
        self.heating = choices["heating"]
        volume = 1e-3 * milk["vat_milk_l"]
        wide = (4.0 * volume / (0.6 * numpy.pi)) ** (1.0 / 3.0)
        deep, base = 0.6 * wide, 0.25 * numpy.pi * wide**2
        side = numpy.pi * wide * deep
        inner, outer = constants["milk_side"], constants["bath_side"]
        through = 1.0 / (1.0 / inner + 8e-4 / 15.0 + 1.0 / outer)
        steel = 500.0 * 7900.0 * 1e-3 * (1.25 * side + base)
        top = lambda lid: 7.0 if lid == "yes" else 36.0
        wet = 0.01 * choices["pot_depth_percent"]
        level = wet * deep + 0.02
        bath = 1e-3 * choices["bath_l"]
        floor = (bath + wet * volume) / level
        with_bath = outer / (outer + inner)
        self.room_c = choices["room_temperature_c"]
        self.milk_j_k = 1030.0 * volume * 3900.0 + (1.0 - with_bath) * steel
        self.bath_j_k = 998.0 * bath * 4180.0 + with_bath * steel
        touches = wet * side + (base if choices["pot_rest"] == "rack" else 0.0)
        self.between = through * touches
        self.from_bath = 8.0 * numpy.pi * numpy.sqrt(4.0 * floor / numpy.pi) * level + 3.0 * floor
        self.from_bath += top(choices["bath_lid"]) * max(floor - base, 0.0)
        self.from_milk = top(choices["pot_lid"]) * base
        self.watt = choices["heater_power_w"]
        self.reaches = constants["power_reaches"] * self.watt
        if self.heating != "bath":
            # Without a bath all of the steel goes with the milk.
            self.milk_j_k = max(self.milk_j_k, milk["vat_milk_kg"] * 3900.0 + steel)
            self.steam = through * (side + base)
            if self.heating == "hob":
                self.from_milk += 8.0 * side

    def rates(self, _, y):
        """Returns how bath, milk and the energy spent change."""
        bath_c, milk_c, _ = y
        lost = self.from_milk * (milk_c - self.room_c)
        if self.heating == "bath":
            watt = self.watt * min(max((self.choices["bath_set_temperature_c"] - bath_c) / BAND_K, 0.0), 1.0)
            over = self.between * (bath_c - milk_c)
            return [(watt - over - self.from_bath * (bath_c - self.room_c)) / self.bath_j_k, (over - lost) / self.milk_j_k, watt]
        gained = min(self.reaches, self.steam * (STEAM_C - milk_c)) if self.heating == "double_boiler" else self.reaches
        return [0.0, (gained - lost) / self.milk_j_k, self.watt]

    def warm(self, at_s, y, milk_c):
        """Returns time and state at which the milk has a temperature; none if it never has."""
        if y[1] >= milk_c:
            return at_s, y
        reached = lambda _, y: y[1] - milk_c
        reached.terminal = True
        solved = solve_ivp(
            self.rates, (0.0, LONGEST_S), y, method="DOP853", events=reached, rtol=1e-9, atol=1e-7, max_step=120.0
        )
        if not len(solved.t_events[0]):
            return None
        return at_s + float(solved.t_events[0][0]), solved.y_events[0][0]

    def add(self, y, mass_kg):
        """Returns the state after something of the room's temperature was stirred in."""
        heat = mass_kg * WATER_HEAT
        mixed = (self.milk_j_k * y[1] + heat * self.room_c) / (self.milk_j_k + heat)
        self.milk_j_k += heat
        return [y[0], mixed, y[2]]

    def run(self):
        """Returns minutes to calcium and rennet and the energy by then; none for what is never reached."""
        choices = self.choices
        now = self.warm(0.0, [choices["bath_start_temperature_c"], choices["fridge_temperature_c"], 0.0], choices["calcium_temperature_c"])
        if now is None:
            return None
        calcium_s = now[0]
        now = self.warm(calcium_s, self.add(now[1], 1e-3 * self.milk["calcium_g"]), choices["rennet_temperature_c"])
        if now is None:
            return None
        return {"to_calcium_min": calcium_s / 60.0, "to_rennet_min": now[0] / 60.0, "energy_kwh": now[1][2] / 3.6e6}
