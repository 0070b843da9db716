"""Independent values for the one-dimensional two-channel model of a wall-flow filter, and the time that a general
boundary-value solver takes for it.

Written from Bissett (Chem. Eng. Sci. 39, 1984) as restated in Processes 9 (2021) 1403, Eqs 11-12, in velocities and
pressures with dimensions (the kernels use a reduced equation). Unknowns: inlet flow share, p1, p2.
Python 3, numpy and scipy.integrate.solve_bvp. Not run by the tests.
"""
import time
import numpy as np
import scipy
from scipy.integrate import solve_bvp

F = 28.454
print('numpy', np.__version__, 'scipy', scipy.__version__)


class Filter:
    def __init__(self, a_in, a_out, ws, length, n_in, n_out, sides, k0, k_soot, rho_soot, beta=0.0):
        self.__dict__.update(locals())

    def with_soot(self, mass):
        self.a1 = np.sqrt(self.a_in ** 2 - mass / (self.n_in * self.length * self.rho_soot))
        if self.sides == 4:
            cake = self.a_in * np.log(self.a_in / self.a1) / (2 * self.k_soot)
        else:
            cake = mass / (self.rho_soot * self.sides * self.a_in * self.length * self.n_in) / self.k_soot
        # At the inlet face; the wall itself passes gas over the width of the narrower channel.
        self.narrowing = self.a_in / min(self.a_in, self.a_out)
        self.resistance = self.ws / self.k0 * self.narrowing + cake
        return self


def solve(f, q, mu, rho, tol=1e-9, nodes=60):
    perimeter = f.sides * f.a_in * f.n_in
    u_mean = q / (perimeter * f.length)
    u1f = q / (f.n_in * f.a1 ** 2)
    u2f = q / (f.n_out * f.a_out ** 2)
    scale = mu * f.resistance * u_mean

    def wall_velocity(dp):
        a, b = rho * f.beta * f.ws * f.narrowing ** 2, mu * f.resistance
        size = np.abs(dp)
        return np.sign(dp) * (size / b if a == 0 else 2 * size / (b + np.sqrt(b * b + 4 * a * size)))

    def rhs(z, y):
        share, p1, p2 = y[0], y[1] * scale, y[2] * scale
        uw = wall_velocity(p1 - p2)
        dshare = -perimeter * uw / q
        u1, u2 = share * u1f, (1 - share) * u2f
        dp1 = -F * mu * u1 / f.a1 ** 2 - 2 * rho * u1 * u1f * dshare
        dp2 = -F * mu * u2 / f.a_out ** 2 + 2 * rho * u2 * u2f * dshare
        return np.vstack((dshare * f.length, dp1 * f.length / scale, dp2 * f.length / scale))

    def bc(ya, yb):
        return np.array([ya[0] - 1, yb[0], yb[2]])

    x = np.linspace(0, 1, nodes)
    guess = np.vstack((1 - x, np.ones_like(x), np.zeros_like(x)))
    sol = solve_bvp(rhs, bc, x, guess, tol=tol, max_nodes=200000)
    assert sol.status == 0, sol.message
    rows = sol.sol(np.linspace(0, 1, 21))
    uw = wall_velocity((rows[1] - rows[2]) * scale)
    return sol.sol(0)[1] * scale, uw / u_mean, rows, scale


def linear(f, q, mu):
    """The analytic solution without inertia."""
    d = mu * f.resistance * q / (f.sides * f.a_in * f.n_in * f.length)
    a = F * mu * q * f.length / (f.n_in * f.a1 ** 4) / d
    b = F * mu * q * f.length / (f.n_out * f.a_out ** 4) / d
    lam, level = np.sqrt(a + b), b / (a + b)
    m = np.array([[1, np.exp(-lam)], [np.exp(-lam), 1]])
    left, right = np.linalg.solve(m, [1 - level, -level])
    v0 = lam * (left - right * np.exp(-lam))
    integral = level + left * (1 - np.exp(-lam)) / lam + right * (1 - np.exp(-lam)) / lam
    return d * (v0 + b * (1 - integral))


n_in = 2.1 / (4 * 1.44e-3 * 0.144)
q_a = 5.85 * n_in * 1.44e-3 ** 2
filter_a = Filter(1.44e-3, 1.44e-3, 0.356e-3, 0.144, n_in, n_in, 4, 5.3e-13, 3.2e-14, 97)
print('filter A, rho 0.64, mu 2.87e-5')
for grams in (0, 18.9554166667, 35.0816666667, 48.37875, 58.8466666667, 70, 72):
    f = filter_a.with_soot(grams / 1000)
    with_inertia, uw, _, _ = solve(f, q_a, 2.87e-5, 0.64)
    without, _, _, _ = solve(f, q_a, 2.87e-5, 0.0)
    print(f'{grams:14.10f} g: no inertia {without:.7g} (analytic {linear(f, q_a, 2.87e-5):.10g}), with {with_inertia:.7g} Pa;'
          f' u_w/mean at 0, L/2, L: {uw[0]:.6f} {uw[10]:.6f} {uw[20]:.6f}')

inch = 0.0254
volume = np.pi / 4 * (10.5 * inch) ** 2 * 12 * inch
ws, alpha, length = 17e-3 * inch, 0.1 * inch - 17e-3 * inch, 12 * inch
n = volume / (2 * (alpha + ws) ** 2 * length)
q_hd = 0.460638477
for name, k0 in (('EX-47', 2.4e-13), ('EX-54', 3.3e-13)):
    f = Filter(alpha, alpha, ws, length, n, n, 4, k0, 1.8e-14, 91).with_soot(0)
    print(f'{name} clean with inertia {solve(f, q_hd, 2.789e-5, 0.66)[0]:.7g} Pa')

# Unequal cells (0.96 and 0.64 mm at 1 mm pitch), Forchheimer 1e8 1/m, 1 L, 10 g, 0.05 m3/s.
f = Filter(0.96e-3, 0.64e-3, 0.2e-3, 0.1, 5000, 5000, 4, 3e-13, 2.4e-14, 95, beta=1e8).with_soot(0.010)
drop, uw, _, _ = solve(f, 0.05, 2.8e-5, 0.67)
print(f'unequal cells, Forchheimer: {drop:.8g} Pa, u_w/mean {uw[0]:.6f} {uw[10]:.6f} {uw[20]:.6f}')
# Three inlet cells per outlet cell.
f = Filter(0.9e-3, 0.9e-3, 0.1e-3, 0.1, 7500, 2500, 4 / 3, 3e-13, 2.4e-14, 95).with_soot(0.010)
drop, uw, _, _ = solve(f, 0.05, 2.8e-5, 0.67)
print(f'three to one: {drop:.8g} Pa, u_w/mean {uw[0]:.6f} {uw[10]:.6f} {uw[20]:.6f}')

print('time of one solve, default tolerance 1e-3 and 1e-6')
for grams in (0, 35.0816666667, 58.8466666667, 70, 72):
    f = filter_a.with_soot(grams / 1000)
    for tol in (1e-3, 1e-6):
        repeats = 20
        begin = time.perf_counter()
        for _ in range(repeats):
            solve(f, q_a, 2.87e-5, 0.64, tol=tol, nodes=11)
        print(f'{grams:6.1f} g, tol {tol:g}: {(time.perf_counter() - begin) / repeats * 1000:.2f} ms')
