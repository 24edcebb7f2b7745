"""Moist air by psychrolib and CoolProp, and how it takes heat and vapour to and from a cheese."""

import CoolProp.HumidAirProp
import numpy
import psychrolib

psychrolib.SetUnitSystem(psychrolib.SI)
PRESSURE_PA = 101325.0
GAS = 8.314462618
ZERO_C = 273.15


def saturation_pa(temperature_c):
    """Returns the pressure of saturated vapour by Hyland and Wexler, as ASHRAE and psychrolib have it."""
    t = temperature_c + ZERO_C
    return float(
        numpy.exp(
            -5.8002206e3 / t + 1.3914993 - 4.8640239e-2 * t + 4.1764768e-5 * t**2 - 1.4452093e-8 * t**3
            + 6.5459673 * numpy.log(t)
        )
    )


def warmed_by_psychrolib(from_c, humidity, to_c):
    """Returns the relative humidity of air that was warmed, 0 to 1: the same humidity ratio at the other temperature."""
    ratio = psychrolib.GetHumRatioFromRelHum(from_c, humidity, PRESSURE_PA)
    return psychrolib.GetRelHumFromHumRatio(to_c, ratio, PRESSURE_PA)


def warmed_by_coolprop(from_c, humidity, to_c):
    """Returns the same of air as a real gas."""
    ratio = CoolProp.HumidAirProp.HAPropsSI("W", "T", from_c + ZERO_C, "P", PRESSURE_PA, "R", humidity)
    return CoolProp.HumidAirProp.HAPropsSI("R", "T", to_c + ZERO_C, "P", PRESSURE_PA, "W", ratio)


def transfer(speed_m_s, length_m, temperature_c):
    """Returns the transfer of heat, W/(m² K), and of vapour, m/s, over a flat plate (laminar mean; Chilton and Colburn)."""
    t = temperature_c + ZERO_C
    density = PRESSURE_PA / (287.05 * t)
    viscosity = 1.458e-6 * t**1.5 / (t + 110.4) / density
    conductivity = 2.64638e-3 * t**1.5 / (t + 245.4 * 10.0 ** (-12.0 / t))
    vapour = 2.16e-5 * (t / 273.15) ** 1.8
    prandtl = viscosity * density * 1006.0 / conductivity
    heat = conductivity / length_m * 0.664 * numpy.sqrt(speed_m_s * length_m / viscosity) * prandtl ** (1.0 / 3.0)
    lewis = viscosity / vapour / prandtl
    return heat, heat / (density * 1006.0 * lewis ** (2.0 / 3.0))


def evaporation_j_kg(temperature_c):
    """Returns the heat of evaporation."""
    return 2.5009e6 - 2361.0 * temperature_c
