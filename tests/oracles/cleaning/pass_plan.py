"""Independent check of the fit of the drop after each cleaning pass: SciPy's curve_fit with known standard uncertainties.

numpy 2.4, scipy 1.17. Not run by the tests: the values stand in tests/reference/cases/cleaning.
"""

import numpy as np
from scipy.optimize import curve_fit


def model(n, level, amplitude, length):
    return level + amplitude * np.exp(-n / length)


def report(passes, drops, u):
    best, covariance = curve_fit(model, passes, drops, p0=[drops[-1], drops[0] - drops[-1], 1.5],
                                 sigma=np.full(len(drops), u), absolute_sigma=True, xtol=1e-14, ftol=1e-14)
    next_drop = model(passes[-1] + 1, *best)
    last = model(passes[-1], *best)
    print(drops, "level", best[0], "u", np.sqrt(covariance[0, 0]), "length", best[2], "next", next_drop, "gain", 1 - next_drop / last)


report(np.array([0.0, 1, 2, 3]), np.array([360.0, 210, 132, 92]), 3.0)
report(np.array([0.0, 1, 2, 3, 4]), np.array([412.0, 305, 246, 219, 201]), 4.0)
a, b, c = 300.0, 180.0, 120.0
print("three points: ratio", (b - c) / (a - b), "level", (a * c - b * b) / (a + c - 2 * b))
