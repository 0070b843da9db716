"""Independent values for the gas calculations. Written from the equations, sharing nothing with the packages.

Python 3, numpy 2.4.6, scipy 1.17.1. Not run by the tests; its output stands in the case files as independent-code.
The composition comes from a linear system of atom balances, enthalpies from numerical integration of the heat
capacity, the atmosphere from numerical integration of the hydrostatic equation, mixing rules from matrices.
"""
import json

import numpy as np
from scipy.integrate import quad, solve_ivp

R = 8.31446261815324
GASES = ["N2", "O2", "CO2", "H2O", "Ar"]
M = dict(N2=28.0134, O2=31.9988, CO2=44.0095, H2O=18.01528, Ar=39.948)
AIR = dict(N2=0.78084, O2=0.209445, CO2=0.000375, H2O=0.0, Ar=0.00934)
M_AIR = 28.96559


def composition(lam, alpha, beta, humidity):
    """Mole fractions of wet exhaust; unknowns are the five exhaust gases, rows are C, H, O, N, Ar."""
    need = 1 + alpha / 4 - beta / 2
    air = lam * need / AIR["O2"]
    water = air * humidity * M_AIR / M["H2O"]
    carbon = 1 + air * AIR["CO2"]
    hydrogen = alpha + 2 * water
    oxygen = beta + air * (2 * AIR["O2"] + 2 * AIR["CO2"]) + water
    nitrogen = 2 * air * AIR["N2"]
    argon = air * AIR["Ar"]
    rows = np.array([[0, 0, 1, 0, 0], [0, 0, 0, 2, 0], [0, 2, 2, 1, 0], [2, 0, 0, 0, 0], [0, 0, 0, 0, 1]], float)
    moles = np.linalg.solve(rows, np.array([carbon, hydrogen, oxygen, nitrogen, argon]))
    return dict(zip(GASES, moles / moles.sum()))


NASA = {
    "N2": ([3.53100528, -1.23660987e-04, -5.02999437e-07, 2.43530612e-09, -1.40881235e-12],
           [2.95257626, 1.39690057e-03, -4.92631691e-07, 7.86010367e-11, -4.60755321e-15]),
    "O2": ([3.78245636, -2.99673416e-3, 9.84730201e-6, -9.68129509e-9, 3.24372837e-12],
           [3.28253784, 1.48308754e-3, -7.57966669e-7, 2.09470555e-10, -2.16717794e-14]),
    "CO2": ([2.35677352, 8.98459677e-3, -7.12356269e-6, 2.45919022e-9, -1.43699548e-13],
            [3.85746029, 4.41437026e-3, -2.21481404e-6, 5.23490188e-10, -4.72084164e-14]),
    "H2O": ([4.19864056, -2.0364341e-3, 6.52040211e-6, -5.48797062e-9, 1.77197817e-12],
            [3.03399249, 2.17691804e-3, -1.64072518e-7, -9.7041987e-11, 1.68200992e-14]),
    "Ar": ([2.5, 0, 0, 0, 0], [2.5, 0, 0, 0, 0]),
}


def cp_molar(x, t):
    return R * sum(x[g] * np.polyval(NASA[g][0 if t < 1000 else 1][::-1], t) for g in GASES)


def molar_mass(x):
    return sum(x[g] * M[g] for g in GASES)


def enthalpy(x, t):
    points = [1000] if t > 1000 else None
    return quad(lambda u: cp_molar(x, u), 298.15, t, points=points, epsabs=1e-9, epsrel=1e-12)[0] / molar_mass(x)


SUTHERLAND = dict(N2=(1.663e-5, 273, 107), O2=(1.919e-5, 273, 139), CO2=(1.370e-5, 273, 222), H2O=(1.12e-5, 350, 1064), Ar=(1.663e-5, 273, 107))


def sutherland(t):
    return np.array([m0 * (t / t0) ** 1.5 * (t0 + s) / (t + s) for m0, t0, s in (SUTHERLAND[g] for g in GASES)])


def dilute(t):
    def lj(molar, eps, sigma):
        omega = np.exp(np.polyval([-0.00331, 0.005341, 0.08406, -0.4623, 0.431], np.log(t / eps)))
        return 0.0266958 * np.sqrt(molar * t) / (sigma**2 * omega) * 1e-6

    co2 = 1.00697e-6 * np.sqrt(t) / np.exp(np.polyval([-1.537102e-2, 5.347906e-2, 5.211155e-2, -0.491266, 0.235156], np.log(t / 251.196)))
    tr = t / 647.096
    h2o = 100e-6 * np.sqrt(tr) / np.polyval([-0.241605, 0.6366564, 2.20462, 1.67752], 1 / tr)
    return np.array([lj(28.01348, 98.94, 0.3656), lj(31.9988, 118.5, 0.3428), co2, h2o, lj(39.948, 143.2, 0.335)])


def phi(mu):
    m = np.array([M[g] for g in GASES])
    return (1 + np.sqrt(mu[:, None] / mu[None, :]) * (m[None, :] / m[:, None]) ** 0.25) ** 2 / np.sqrt(8 * (1 + m[:, None] / m[None, :]))


def wilke(x, mu):
    v = np.array([x[g] for g in GASES])
    return float(np.sum(v * mu / (phi(mu) @ v)))


def pure_conductivities(t):
    """mW/(m K); viscosities of dilute() in Pa s."""
    mu = dilute(t) * 1e6
    n2 = 1.511 * mu[0] + 2.117 * (t / 126.192) - 3.332 * (t / 126.192) ** 0.7
    o2 = 1.036 * mu[1] + 6.283 * (t / 154.581) ** 0.9 - 4.262 * (t / 154.581) ** 0.6
    ar = 0.8158 * mu[4] - 0.4320 * (t / 150.687) ** 0.77
    ts = t / 251.196
    omega = np.polyval([0.2255388, -0.4362677, 0, 0, 0.6735941, -0.5387661, 0.6280115, 0.4226159], 1 / ts)
    inner = np.polyval([-1.940558, 7.981590, -10.33404, 4.350794], 100 / t) + 2.387869e-2 * t / 100
    co2 = 0.475598 * np.sqrt(t) * (1 + 0.4 * (1 + np.exp(-183.5 / t) * inner)) / omega
    tr = t / 647.096
    h2o = np.sqrt(tr) / np.polyval([4.096266e-4, -3.454586e-3, 6.770357e-3, 1.323095e-2, 2.443221e-3], 1 / tr)
    return np.array([n2, o2, co2, h2o, ar])


def conductivity(x, t):
    v = np.array([x[g] for g in GASES])
    return float(np.sum(v * pure_conductivities(t) / (phi(dilute(t)) @ v)))


def atmosphere(h):
    g, mol, r, lapse = 9.80665, 0.0289644, 8.31432, 0.0065
    run = solve_ivp(lambda z, p: -p * g * mol / (r * (288.15 - lapse * z)), (0, h), [101325.0], rtol=1e-12, atol=1e-6, method="DOP853")
    return run.y[0, -1]


out = {}
for lam in (1.0, 2.0, 4.0):
    x = composition(lam, 1.86, 0, 0)
    out[f"dry air, CH1.86, lambda {lam}"] = {g: round(100 * x[g], 6) for g in GASES} | {
        "M": round(molar_mass(x), 6),
        "cp600": round(cp_molar(x, 600) / molar_mass(x) * 1000, 5),
    }
x = composition(1.5, 1.9, 0.1, 0.012)
out["CH1.9O0.1, lambda 1.5, 12 g/kg"] = {g: round(100 * x[g], 6) for g in GASES} | {"M": round(molar_mass(x), 6)}
x = composition(2.0, 1.8, 0, 0.01071)
for t in (300, 523.15, 600, 1000, 1200):
    out[f"CH1.8, lambda 2, 10.71 g/kg, {t} K"] = {
        "cp": cp_molar(x, t) / molar_mass(x) * 1000,
        "h_kJ": enthalpy(x, t),
        "gamma": cp_molar(x, t) / (cp_molar(x, t) - R),
        "mu_sutherland": wilke(x, sutherland(t)) * 1e6,
        "mu_dilute": wilke(x, dilute(t)) * 1e6,
        "difference_percent": 100 * (wilke(x, sutherland(t)) / wilke(x, dilute(t)) - 1),
        "k_mW": conductivity(x, t),
    }
air = dict(AIR)
for t in (300, 600, 1000):
    out[f"dry air, {t} K"] = {"cp": cp_molar(air, t) / M_AIR * 1000, "mu_wilke_dilute": wilke(air, dilute(t)) * 1e6, "k_mW": conductivity(air, t)}
for t in (100, 300):
    out[f"dilute at {t} K"] = dict(zip(GASES, (dilute(t) * 1e6).round(6)))
out["pure conductivities, mW/(m K)"] = {t: dict(zip(GASES, pure_conductivities(t).round(6))) for t in (300.0, 600.0, 1000.0)}
out["atmosphere"] = {str(h): atmosphere(h) for h in (500, 1500, 2500, 4500)}
print(json.dumps(out, indent=1))
