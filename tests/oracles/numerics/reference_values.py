"""Independent values for the numerics package, written to tests/reference/numerics/independent-code.json.

Python 3.11, scipy 1.17.1, numpy 2.4.6, mpmath 1.3.0. Not run by the tests.
Two solvers with nothing in common (implicit Radau IIA and the Taylor series of mpmath, or Radau IIA
and BDF/Adams) have to agree before a value of a differential equation is written.
"""
import json
from pathlib import Path

import mpmath as mp
import numpy as np
from scipy.integrate import solve_ivp
from scipy.optimize import curve_fit
from scipy.stats import t as student_t

TARGET = Path(__file__).parents[2] / 'reference' / 'numerics' / 'independent-code.json'
values = {}


def text(number, digits=15):
    return mp.nstr(mp.mpf(number), digits, min_fixed=-5, max_fixed=8)


# --- Student's t quantiles, 40 digits -------------------------------------------------------------
mp.mp.dps = 40


def t_quantile(p, nu):
    p, nu = mp.mpf(p), mp.mpf(nu)
    tail = 1 - p

    def excess(logarithm):
        x = mp.exp(logarithm)
        return mp.log(mp.betainc(nu / 2, mp.mpf(1) / 2, 0, nu / (nu + x * x), regularized=True) / 2) - mp.log(tail)

    start = mp.log(mp.mpf(float(student_t.ppf(float(p), float(nu)))))
    return mp.exp(mp.findroot(excess, (start, start + mp.mpf('1e-8')), tol=1e-60))


values['student-t'] = [
    {'probability': p, 'degreesOfFreedom': nu, 'quantile': text(t_quantile(p, nu))}
    for nu in ['0.5', '1', '2.5', '5', '12.8', '16', '100', '1000000']
    for p in ['0.501', '0.9', '0.975', '0.995', '0.999999']
] + [
    {'probability': p, 'degreesOfFreedom': 'Infinity', 'quantile': text(mp.sqrt(2) * mp.erfinv(2 * mp.mpf(p) - 1))}
    for p in ['0.501', '0.9', '0.975', '0.995', '0.999999']
]

# --- Not stiff: Lotka-Volterra, a swinging pendulum --------------------------------------------------
mp.mp.dps = 30


def taylor(f, y0, t):
    return [text(v) for v in mp.odefun(f, 0, [mp.mpf(v) for v in y0], tol=mp.mpf('1e-25'))(mp.mpf(t))]


values['lotka-volterra'] = {
    str(t): taylor(lambda _, y: [y[0] * (mp.mpf('1.5') - y[1]), y[1] * (y[0] - 3)], ['10', '5'], t) for t in (2, 10)
}
values['pendulum'] = {str(t): taylor(lambda _, y: [y[1], -mp.sin(y[0])], ['2', '0'], t) for t in (1, 10)}

# --- Stiff: Robertson at moderate times, an axial burn-off --------------------------------------------


def robertson(_, y):
    a, b, c = 0.04 * y[0], 1e4 * y[1] * y[2], 3e7 * y[1] * y[1]
    return [-a + b, a - b - c, c]


def robertson_jacobian(_, y):
    return [[-0.04, 1e4 * y[2], 1e4 * y[1]], [0.04, -1e4 * y[2] - 6e7 * y[1], -1e4 * y[1]], [0, 6e7 * y[1], 0]]


def agreed(f, y0, end, jacobian=None, rtol=1e-11, atol=1e-14, agreement=1e-8):
    """Both implicit solvers at tight tolerance; only digits on which they agree are worth quoting."""
    options = {'rtol': rtol, 'atol': atol, **({'jac': jacobian} if jacobian else {})}
    radau = solve_ivp(f, (0, end), y0, method='Radau', **options).y[:, -1]
    other = solve_ivp(f, (0, end), y0, method='LSODA', rtol=max(rtol, 1e-12), atol=atol).y[:, -1]
    worst = np.max(np.abs(radau - other) / np.maximum(np.abs(radau), 1e-6 * np.max(np.abs(radau))))
    assert worst < agreement, worst
    return radau


for end in (40.0, 4e4):
    values.setdefault('robertson', {})[str(int(end))] = [
        text(v, 10) for v in agreed(robertson, [1, 0, 0], end, robertson_jacobian, rtol=1e-12, atol=1e-17)
    ]

# A front that burns along a hot channel. Scaled temperature T and fuel s in 40 cells, gas moves heat
# downstream, neighbours conduct:
#   dT_i/dt = U (T_(i-1) - T_i) + D (T_(i-1) - 2 T_i + T_(i+1)) + Q r_i,   ds_i/dt = -r_i,
#   r_i = A s_i exp(-E / T_i),  inlet T_0 = 1 + 0.6 min(1, t / 2), outlet without gradient.
CELLS, U, D, Q, A, E = 40, 10.0, 5.0, 0.5, 3e4, 16.0


def burn(t, y):
    temperature, fuel = y[0::2], y[1::2]
    rate = A * fuel * np.exp(-E / temperature)
    inlet = 1 + 0.6 * min(1.0, t / 2)
    before = np.concatenate(([inlet], temperature[:-1]))
    after = np.concatenate((temperature[1:], temperature[-1:]))
    out = np.empty_like(y)
    out[0::2] = U * (before - temperature) + D * (before - 2 * temperature + after) + Q * rate
    out[1::2] = -rate
    return out


start = np.empty(2 * CELLS)
start[0::2], start[1::2] = 1.0, 1.0
for end in (3.0, 5.0):
    state = agreed(burn, start, end, rtol=1e-10, atol=1e-12, agreement=1e-7)
    values.setdefault('axial-burn-off', {})[str(int(end))] = {
        'temperature': [text(v, 9) for v in state[0::2]],
        'fuel': [text(v, 9) for v in state[1::2]],
    }

# --- Weighted fits ------------------------------------------------------------------------------------
flow = np.array([1.0, 2.0, 3.5, 5.0, 7.5, 10.0])
drop = np.array([2.61, 5.67, 11.2, 17.4, 30.4, 46.2])
sigma = np.array([0.1, 0.1, 0.2, 0.3, 0.5, 0.8])
mp.mp.dps = 40


def weighted_fit(rows, rhs, sigmas):
    """Normal equations in 40 digits: no rounding worth mention."""
    design = mp.matrix([[mp.mpf(str(v)) for v in row] for row in rows])
    weights = mp.diag([1 / mp.mpf(str(s)) ** 2 for s in sigmas])
    target = mp.matrix([mp.mpf(str(v)) for v in rhs])
    covariance = (design.T * weights * design) ** -1
    beta = covariance * design.T * weights * target
    return beta, covariance


beta, covariance = weighted_fit([[q, q * q] for q in flow], drop, sigma)
values['viscous-and-inertial'] = {
    'x': flow.tolist(),
    'y': drop.tolist(),
    'standardUncertainties': sigma.tolist(),
    'coefficients': [text(v) for v in beta],
    'standardErrors': [text(mp.sqrt(covariance[i, i])) for i in range(2)],
    'covariance01': text(covariance[0, 1]),
}
steps = np.array([0, 1, 2, 3, 4, 5, 6, 7], dtype=float)
level = np.array([100.4, 71.8, 55.9, 46.4, 38.9, 35.6, 34.1, 31.7])
found, cov = curve_fit(
    lambda n, a, b, c: a + b * np.exp(-n / c), steps, level, p0=[30, 70, 2], xtol=1e-15, ftol=1e-15, gtol=1e-15
)
values['exponential-approach'] = {
    'x': steps.tolist(),
    'y': level.tolist(),
    'parameters': [text(v, 9) for v in found],
    'standardErrors': [text(np.sqrt(cov[i, i]), 6) for i in range(3)],
}

TARGET.parent.mkdir(parents=True, exist_ok=True)
TARGET.write_text(json.dumps(values, indent=2) + '\n')
print(json.dumps({k: v for k, v in values.items() if k != 'student-t'}, indent=1)[:6000])
