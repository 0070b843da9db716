"""Independent solution of the teaching model of an SCR catalyst (plug flow, Eley-Rideal, Langmuir).

Prints the values of the cases marked `independent-code` of scr-conversion and ammonia-storage.
Versions used: Python 3, numpy 2.4.6, scipy 1.17.1. Not run by the tests.
"""
import numpy as np
from scipy.integrate import solve_ivp

R = 8.31446261815324


def arr(a, e, ref, t):
    return a * np.exp(-e / R * (1 / t - 1 / ref))


def k_ads(t):
    return arr(60000.0, -60000.0, 523.15, t)


def scr(t_c, sv_per_h, nox, alpha, y):
    t = t_c + 273.15
    sv = sv_per_h / 3600
    fast = 2 * min(y, 1 - y)
    no2 = max(0.0, 2 * y - 1)
    s = 1.0 if y <= 0.5 else (2 + 2 * y) / 3
    ka, kox = k_ads(t), arr(1.0, 150000.0, 723.15, t)

    def rhs(_, x):
        theta = ka * x[1] / (1 + ka * x[1])
        kr = (arr(25.0, 60000.0, 523.15, t) * (1 - 0.7 * no2) + arr(100.0, 40000.0, 523.15, t) * fast) * theta
        keff = 1 / (1 / kr + 1 / 60.0) if kr > 0 else 0.0
        r = keff * x[0]
        return [-r / sv, -(s * r + kox * x[1]) / sv]

    sol = solve_ivp(rhs, (0, 1), [nox, alpha * nox], method="LSODA", rtol=1e-11, atol=1e-18)
    x_n, x_a = sol.y[:, -1]
    return 1 - x_n / nox, x_a * 1e6


if __name__ == "__main__":
    for args in [(220, 40000, 400e-6, 1.0, 0.4), (220, 40000, 400e-6, 1.0, 0.0), (350, 40000, 400e-6, 1.2, 0.4), (500, 40000, 400e-6, 1.0, 0.0)]:
        print(args, scr(*args))
    for t in (220, 380):
        kx = k_ads(t + 273.15) * 400e-6
        print(t, "coverage", kx / (1 + kx), "stored g in 4 L at 2 g/L", 8 * kx / (1 + kx))
