"""Independent values for mixing ethanol and water, from the general formula of OIML R 22 at 20 degrees Celsius.

numpy 2.4, scipy 1.17. Not run by the tests: the values stand in tests/reference/cases/cleaning.
"""

import numpy as np
from scipy.optimize import brentq

COEFFICIENTS = np.array([998.20123, -192.9769495, 389.1238958, -1668.103923, 13522.15441, -88292.78388, 306287.4042,
                         -613838.1234, 747017.2998, -547846.1354, 223446.0334, -39032.85426])


def density(mass_fraction):
    return np.polynomial.polynomial.polyval(mass_fraction, COEFFICIENTS)


def mass_fraction(volume_fraction):
    return brentq(lambda w: w * density(w) / density(1.0) - volume_fraction, 0, 1, xtol=1e-15)


alcohol, water = 0.05 * density(1.0), 0.05 * density(0.0)
w = alcohol / (alcohol + water)
volume = (alcohol + water) / density(w)
print("50 mL + 50 mL: mass fraction", w, "volume mL", volume * 1000, "contraction", 1 - volume / 0.1)
for start, end in [(0.95, 0.50), (0.95, 0.70), (0.70, 0.50), (0.75, 0.35), (0.56, 0.50)]:
    first, last = mass_fraction(start), mass_fraction(end)
    print(start, "to", end, "water per 100:", 100 * density(first) * (first / last - 1) / density(0.0))
