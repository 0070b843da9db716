"""Independent values for the split into a viscous and an inertial part and for the conversion between states.

numpy.linalg.lstsq on the design matrix with explicit covariance; Sutherland's formula and the ideal gas written out.
Python 3, numpy. Not run by the tests.
"""
import numpy as np

R, M = 8.31446261815324, 0.02896559


def mu(t):
    return 1.716e-5 * (t / 273) ** 1.5 * (273 + 111) / (t + 111)


def rho(t, p=101325.0):
    return p * M / (R * t)


def fit(rows, u=None, zero=False):
    d = np.array([r[0] for r in rows])
    a = np.array([[mu(r[2]) * r[1], rho(r[2]) * r[1] ** 2] for r in rows])
    if zero:
        a = np.column_stack((np.ones(len(rows)), a))
    x, *_ = np.linalg.lstsq(a / np.linalg.norm(a, axis=0), d, rcond=None)
    x = x / np.linalg.norm(a, axis=0)
    gram = np.linalg.inv(a.T @ a)
    dof = len(rows) - a.shape[1]
    s2 = u ** 2 if u is not None else (np.sum((d - a @ x) ** 2) / dof if dof > 0 else np.nan)
    cov = gram * s2
    i = 1 if zero else 0
    va, vb, cab = cov[i, i], cov[i + 1, i + 1], cov[i, i + 1]
    area = 1 / np.sqrt(2 * x[i + 1]) if x[i + 1] > 0 else np.nan
    print('a', f'{x[i]:.8g}', 'b', f'{x[i + 1]:.8g}', 'u_b', f'{np.sqrt(vb):.6g}', 'u_a', f'{np.sqrt(va):.6g}', 'area m2', f'{area:.8g}',
          'u_area', f'{area * np.sqrt(vb) / (2 * x[i + 1]):.6g}', 'corr', f'{cab / np.sqrt(va * vb):.6g}', 'zero', f'{x[0]:.6g}' if zero else '')


k = 273.15
points = [(1100, 56 / 3600, 130 + k), (3300, 140 / 3600, 170 + k), (6300, 230 / 3600, 200 + k), (9700, 320 / 3600, 230 + k)]
print('four points, scatter'); fit(points)
print('four points, 1 mbar known'); fit(points, u=100.0)
print('four points with zero'); fit(points, zero=True)
print('two points'); fit([points[0], points[2]], u=100.0)
print('nearly straight, 1 mbar known'); fit([(1000, 50 / 3600, 200 + k), (2020, 100 / 3600, 200 + k), (3900, 200 / 3600, 200 + k)], u=100.0)

print('at equal mass flow, over 150 degC, viscous:')
for c in (100, 200, 300, 400, 600):
    print('  ', c, f'{mu(c + k) * (c + k) / (mu(150 + k) * (150 + k)):.7g}')
print('at equal volume flow, 150 to 600 degC, viscous', f'{mu(600 + k) / mu(150 + k):.7g}')
dp = 1000.0
q, q2 = 56 / 3600, 231 / 3600
print('56 m3/h 130 degC to 231 m3/h 200 degC: viscous', f'{mu(200 + k) * q2 / (mu(130 + k) * q):.7g}', 'inertial', f'{rho(200 + k) * q2 ** 2 / (rho(130 + k) * q ** 2):.7g}')
t1, p1, ts, ps, qb = 28 + k, 98500.0, 20 + k, 101325.0, 300 / 3600
qs = qb * rho(t1, p1) / rho(ts, ps)
f = 0.8 * mu(ts) * qs / (mu(t1) * qb) + 0.2 * rho(ts, ps) * qs ** 2 / (rho(t1, p1) * qb ** 2)
print('flow bench 20 mbar at 28 degC, 985 hPa, 300 m3/h, 20 % inertial: standard drop mbar', f'{20 * f:.8g}', 'flow m3/h', f'{qs * 3600:.8g}')
tn, pn, qn = 15 + k, 95000.0, 280 / 3600
v, i = 0.8 * mu(tn) * qn / (mu(t1) * qb), 0.2 * rho(tn, pn) * qn ** 2 / (rho(t1, p1) * qb ** 2)
print('the same at 280 m3/h, 15 degC, 950 hPa: drop mbar', f'{20 * (v + i):.8g}', 'inertial share there %', f'{100 * i / (v + i):.8g}')
