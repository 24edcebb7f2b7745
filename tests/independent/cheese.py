"""What a cheese is made of: densities and heat of its parts (Choi and Okos), water held by salt and solids."""

import numpy

WATER_KG_M3 = 993.0  # of the water in a cheese at 35 to 40 °C
SALT_KG_M3 = 2165.0
SALT_KG_MOL = 0.05844
WATER_KG_MOL = 0.01801528
SALT_SATURATION = 6.147
T = 30.0  # °C at which the solids are taken

DENSITY = {
    "fat_percent": 925.59 - 0.41757 * T,
    "protein_percent": 1329.9 - 0.5184 * T,
    "carbohydrate_percent": 1599.1 - 0.31046 * T,
    "ash_percent": 2423.8 - 0.28063 * T,
    "salt_percent": SALT_KG_M3,
}
ASH_HEAT = 1092.6 + 1.8896 * T - 3.6817e-3 * T * T
HEAT = {
    "fat_percent": 1984.2 + 1.4733 * T - 4.8008e-3 * T * T,
    "protein_percent": 2008.2 + 1.2089 * T - 1.3129e-3 * T * T,
    "carbohydrate_percent": 1548.8 + 1.9625 * T - 5.9399e-3 * T * T,
    "ash_percent": ASH_HEAT,
    "salt_percent": ASH_HEAT,
}


class Cheese:
    """The dry solids of a cheese and the water in them, kg per kg of dry solids."""

    def __init__(self, parts):
        solids = {key: part for key, part in parts.items() if key in DENSITY}
        mass = sum(solids.values())
        self.start_water = parts["moisture_percent"] / mass
        self.solids_kg_m3 = mass / sum(part / DENSITY[key] for key, part in solids.items())
        self.heat_j_kg_k = sum(part * HEAT[key] for key, part in solids.items()) / mass
        self.salt = solids["salt_percent"] / mass
        self.fat = solids["fat_percent"] / mass
        self.non_fat = 1.0 - self.salt - self.fat

    def solids_in_fresh_kg_m3(self):
        """Returns the dry solids in a m³ of the fresh cheese."""
        return 1.0 / (1.0 / self.solids_kg_m3 + self.start_water / WATER_KG_M3)

    def fresh_kg_m3(self):
        """Returns the density of the fresh cheese."""
        return (1.0 + self.start_water) * self.solids_in_fresh_kg_m3()

    def shrunk(self, water):
        """Returns the linear shrinkage: the cube root of the volume over that of the fresh cheese."""
        return numpy.cbrt((1.0 / self.solids_kg_m3 + water / WATER_KG_M3) * self.solids_in_fresh_kg_m3())

    def water_activity(self, water, oswin_a=0.10, oswin_b=0.375):
        """Returns Ross's product of the activity of the brine (Pitzer and Mayorga 1973) and that of the solids (Oswin)."""
        water = numpy.maximum(water, 1e-9)
        molality = numpy.minimum(self.salt / (SALT_KG_MOL * water), SALT_SATURATION)
        root = numpy.sqrt(molality)
        osmotic = (
            1.0
            - 0.392 * root / (1.0 + 1.2 * root)
            + molality * (0.0765 + 0.2664 * numpy.exp(-2.0 * root))
            + 0.00127 * molality**2
        )
        brine = numpy.exp(-2.0 * molality * WATER_KG_MOL * osmotic)
        return brine / (1.0 + (oswin_a * self.non_fat / water) ** (1.0 / oswin_b))
