"""Independent check of the error of the cost difference and of the chance that cleaning is cheaper: Monte Carlo and a dense lattice.

numpy 2.4, scipy 1.17. Not run by the tests: the values stand in tests/reference/cases/cleaning. Both lives are lognormal
with the mean and standard deviation that are given, and end at the distance that is still driven.
"""

import numpy as np
from scipy.stats import lognorm


def lognormal(mean, relative):
    s = np.sqrt(np.log1p(relative ** 2))
    return lognorm(s, scale=mean * np.exp(-s * s / 2))


def difference(lc, ln, C, N, p, D):
    lc, ln = np.minimum(lc, D), np.minimum(ln, D)
    return 1000 * ((C + p * N) / ((1 - p) * lc + p * ln) - N / ln)


def report(name, C, N, p, Lc, uc, Ln, un, D=np.inf):
    a, b = lognormal(Lc, uc), lognormal(Ln, un)
    rng = np.random.default_rng(1)
    n = 4_000_000
    d = difference(a.rvs(n, random_state=rng), b.rvs(n, random_state=rng), C, N, p, D)
    # Both lives on one dense lattice of standard normal values: the kink at D does not show.
    z = np.linspace(-8.5, 8.5, 4001)
    weight = np.exp(-z * z / 2)
    weight /= weight.sum()
    life = lambda mean, u: mean / np.sqrt(1 + u * u) * np.exp(np.sqrt(np.log1p(u * u)) * z)
    grid = difference(life(Lc, uc)[:, None], life(Ln, un)[None, :], C, N, p, D)
    mean = lambda values: weight @ values @ weight
    sd = np.sqrt(mean((grid - mean(grid)) ** 2))
    print(f"{name}: Monte Carlo sd {d.std():.5f} P(clean) {np.mean(d < -1e-9):.5f} P(replace) {np.mean(d > 1e-9):.5f}; "
          f"lattice sd {sd:.6f} P(clean) {mean(grid < -1e-9):.5f} P(replace) {mean(grid > 1e-9):.5f}")


report("by-hand", 350, 1400, 0.15, 60e3, 0.3, 140e3, 0.2)
report("old-vehicle", 350, 1400, 0.0, 60e3, 0.3, 140e3, 0.2, 40e3)
report("at-the-kink", 1450, 1400, 0.0, 121e3, 0.3, 140e3, 0.2, 120e3)
report("at-the-kink-risk", 1200, 1400, 0.15, 121e3, 0.3, 140e3, 0.2, 120e3)
report("well-known", 350, 1400, 0.15, 60e3, 0.01, 140e3, 0.01)
