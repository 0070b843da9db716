"""Independent values for the deep-bed model, and the fit of its percolation factor to the loaded heavy-duty curves.

Unit collectors (Konstandopoulos and Johnson, SAE 890405; partition coefficient of SAE 2000-01-1016) with pore and
collector sizes in metres, integrated step by step in deposited mass (the kernels use a closed integral in reduced form).
Python 3, numpy, scipy.optimize. Not run by the tests.
"""
import numpy as np
from scipy.optimize import least_squares

F, INCH = 28.454, 0.0254
ws, alpha, length = 17e-3 * INCH, 0.1 * INCH - 17e-3 * INCH, 12 * INCH
volume = np.pi / 4 * (10.5 * INCH) ** 2 * length
n_in = volume / (2 * (alpha + ws) ** 2 * length)
area = 4 * alpha * length * n_in
q, mu = 0.460638477, 2.789e-5

EX47 = dict(porosity=0.48, pore=13.4e-6, k0=2.4e-13, k_soot=1.8e-14, points=[
    (0.3, 2.92), (7.3, 6.05), (9.8, 6.60), (15.9, 7.39), (24.7, 8.22), (30.7, 8.68), (36.9, 9.21), (42.8, 9.56), (53.3, 10.34),
    (62.5, 10.93), (68.6, 11.42), (77.9, 12.17)])
EX54 = dict(porosity=0.50, pore=24.4e-6, k0=3.3e-13, k_soot=1.9e-14, points=[
    (0.3, 2.15), (5.1, 3.98), (7.2, 5.04), (10.2, 6.40), (15.8, 8.18), (21.9, 9.40), (28.0, 10.27), (34.3, 10.93), (40.1, 11.56),
    (47.5, 12.28), (53.9, 12.68), (65.7, 13.15), (77.8, 14.02), (83.8, 14.19)])


def kuwabara(e):
    s = 1 - e
    return 2 / 9 * (2 - 1.8 * s ** (1 / 3) - e - 0.2 * s * s) / s


def loaded(grams, m, psi, rho_wall, steps=20000):
    d0 = 1.5 * (1 - m['porosity']) / m['porosity'] * m['pore']
    cell = d0 / (1 - m['porosity']) ** (1 / 3)
    count = area * ws / (np.pi / 6 * cell ** 3)
    diameter = lambda mass: 2 * (3 / (4 * np.pi) * mass / count / rho_wall + (d0 / 2) ** 3) ** (1 / 3)
    to_wall = lambda mass: 1 - (diameter(mass) ** 2 - d0 ** 2) / ((psi * cell) ** 2 - d0 ** 2)
    total = np.linspace(0, max(grams) / 1000, steps + 1)
    wall = np.zeros_like(total)
    h = total[1]
    for i in range(steps):
        k1 = to_wall(wall[i])
        k2 = to_wall(wall[i] + h * k1 / 2)
        k3 = to_wall(wall[i] + h * k2 / 2)
        k4 = to_wall(wall[i] + h * k3)
        wall[i + 1] = wall[i] + h / 6 * (k1 + 2 * k2 + 2 * k3 + k4)
    w = np.interp(np.array(grams) / 1000, total, wall)
    d = diameter(w)
    ratio = (d / d0) ** 2 * kuwabara(1 - (d / cell) ** 3) / kuwabara(m['porosity'])
    inner = np.sqrt(alpha ** 2 - (np.array(grams) / 1000 - w) / (n_in * length * 91))
    drop = mu * q / area * (ws / (m['k0'] * ratio) + alpha / (2 * m['k_soot']) * np.log(alpha / inner))
    drop += F * mu * q * length / (3 * n_in) * (1 / inner ** 4 + 1 / alpha ** 4)
    return drop, w * 1000, ratio


for name, m in (('EX-47', EX47), ('EX-54', EX54)):
    grams, measured = np.array(m['points']).T
    fit = least_squares(lambda p: loaded(grams, m, p[0], 8.15, 800)[0] / 1000 / measured - 1, [0.87], bounds=([0.82], [0.99]))
    print(f'{name}: percolation factor with 8.15 kg/m3 in the wall: {fit.x[0]:.4f}')

print('used: 0.863 and 0.884')
for name, m, psi in (('EX-47', EX47, 0.863), ('EX-54', EX54, 0.884)):
    grams, measured = np.array(m['points']).T
    drop, wall, ratio = loaded(grams, m, psi, 8.15)
    for row in zip(grams, measured, drop, wall, ratio):
        print(f'{name} {row[0]:5.1f} g: measured {row[1]:5.2f} kPa, model {row[2]:.6g} Pa ({100 * (row[2] / 1000 / row[1] - 1):+.1f} %),'
              f' in the wall {row[3]:.6g} g, permeability left {100 * row[4]:.5g} %')
