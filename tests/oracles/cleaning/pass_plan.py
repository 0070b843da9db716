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
    slopes = [(n, np.array([1, np.exp(-n / best[2]), best[1] * np.exp(-n / best[2]) * n / best[2] ** 2])) for n in (passes[-1], passes[-1] + 1)]
    ratio = next_drop / last
    of_gain = (slopes[1][1] - ratio * slopes[0][1]) / last
    print("  now", last, "u", np.sqrt(slopes[0][1] @ covariance @ slopes[0][1]), "u(gain)", np.sqrt(of_gain @ covariance @ of_gain))
    print(drops, "level", best[0], "u", np.sqrt(covariance[0, 0]), "length", best[2], "next", next_drop, "gain", 1 - next_drop / last)


report(np.array([0.0, 1, 2, 3]), np.array([360.0, 210, 132, 92]), 3.0)
report(np.array([0.0, 1, 2, 3, 4]), np.array([412.0, 305, 246, 219, 201]), 4.0)
report(np.array([0.0, 1, 2, 3]), np.array([100.0, 50, 47, 46]), 3.0)
report(np.array([0.0, 1, 2, 3, 4]), np.array([90.0, 60, 50.5, 47.85, 46.94]), 0.3)
report(np.array([0.0, 1, 2, 3]), np.array([150.0, 80, 65, 62]), 0.5)
a, b, c = 300.0, 180.0, 120.0
print("three points: ratio", (b - c) / (a - b), "level", (a * c - b * b) / (a + c - 2 * b))
