"""Independent check of the acid that an alkaline liquid takes: electroneutrality of all ions solved for the dose.

numpy 2.4, scipy 1.17. Not run by the tests: the values stand in tests/reference/cases/cleaning. The species are built
from the successive equilibria, and the dose is found so that the pH comes out, not by a mean number of protons.
"""

from scipy.optimize import brentq


def charge(acid, base, ph, constants):
    h = 10.0 ** -ph
    species = [1.0]
    for constant in constants:
        species.append(species[-1] * 10.0 ** -constant / h)
    free = acid / sum(species)
    anions = sum(i * free * share for i, share in enumerate(species))
    return base + h - 1e-14 / h - anions


def base_at(ph):
    return 1e-14 / 10.0 ** -ph - 10.0 ** -ph


def dose(base, ph, constants):
    return brentq(lambda acid: charge(acid, base, ph, constants), 0, 100, xtol=1e-16, rtol=1e-14)


citric, acetic = (3.128, 4.761, 6.396), (4.756,)
for target in (6, 7, 8, 9):
    acid = dose(base_at(12), target, citric)
    print("20 L, pH 12 to", target, "citric g", 20 * acid * 192.124, "protons", (base_at(12) - base_at(target)) / acid)
print("20 L, pH 12 to 6 acetic g", 20 * dose(base_at(12), 6, acetic) * 60.052)
acid = dose(0.1, 7, citric)
print("0.1 mol/L of sodium hydroxide with", acid, "mol/L of citric acid: pH", brentq(lambda ph: charge(acid, 0.1, ph, citric), 2, 12))
