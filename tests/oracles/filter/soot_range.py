"""Independent soot masses of a passenger-car filter (200 cpsi, 12 mil, 144 x 152 mm) from a drop, with the usual and with the
least and most permeable published walls and soot cakes.

Closed form of Konstandopoulos et al., SAE 2000-01-1016, Eq. 1 with entrance and exit as in KONA 26 (2008), Eq. 8, and bisection.
The least soot lies in the wall first: unit collectors, integrated step by step in the mass that has come (the kernels use a
closed integral). Of the measured rise over the clean drop the least explains 85 %, the most 105 %.
Python 3, standard library. Not run by the tests.
"""
from math import log, pi, sqrt

INCH = 0.0254
pitch, ws = INCH / sqrt(200), 12e-3 * INCH
alpha, length, diameter = pitch - ws, 0.152, 0.144
volume = pi / 4 * diameter ** 2 * length
inlets = volume / (2 * pitch ** 2 * length)
temperature, q = 523.15, 180 / 3600
mu = 1.716e-5 * (temperature / 273) ** 1.5 * (273 + 111) / (temperature + 111)
rho = 101325 * 0.02896559 / (8.31446261815324 * temperature)
USUAL, LEAST, MOST = (3e-13, 2.4e-14, 95), (2.4e-13, 1.45e-14, 91), (1e-12, 7e-14, 121.6)
POROSITY, PSI, IN_WALL = 0.5, 0.884, 8.0


def kuwabara(e):
    s = 1 - e
    return 2 / 9 * (2 - 1.8 * s ** (1 / 3) - e - 0.2 * s * s) / s


def wall_after(total, steps=4000):
    """Soot in the wall and its permeability over the clean one, collectors of diameter 1."""
    cell = 1 / (1 - POROSITY) ** (1 / 3)
    area = 4 * alpha * length * inlets
    solid = area * ws * (1 - POROSITY) * IN_WALL
    size = lambda wall: (1 + wall / solid) ** (1 / 3)
    share = lambda wall: 1 - (size(wall) ** 2 - 1) / ((PSI * cell) ** 2 - 1)
    wall, h = 0.0, total / steps
    for _ in range(steps):
        k1 = share(wall)
        k2 = share(wall + h * k1 / 2)
        k3 = share(wall + h * k2 / 2)
        wall += h / 6 * (k1 + 2 * k2 + 2 * k3 + share(wall + h * k3))
    grown = size(wall)
    return wall, grown ** 2 * kuwabara(1 - (grown / cell) ** 3) / kuwabara(POROSITY)


def drop(mass, material, deep=False, zeta=0.628):
    k0, ks, packing = material
    wall, ratio = wall_after(mass) if deep and mass > 0 else (0.0, 1.0)
    inner = sqrt(alpha ** 2 - (mass - wall) / (inlets * length * packing))
    viscous = ws / (k0 * ratio * alpha) + log(alpha / inner) / (2 * ks) + 4 * 28.454 * length ** 2 / 3 * (1 / inner ** 4 + 1 / alpha ** 4)
    head = rho * q ** 2 * pitch ** 4 / (volume ** 2 * alpha ** 2)
    return mu * q / (2 * volume) * pitch ** 2 * viscous + head * 2 * zeta * (length / alpha) ** 2


def soot(measured, material, part=1.0, deep=False):
    clean = drop(0, material)
    if measured <= clean:
        return 0.0
    target = clean + part * (measured - clean)
    low, high = 0.0, inlets * length * material[2] * alpha ** 2 * (1 - 1e-9)
    for _ in range(60):
        middle = (low + high) / 2
        low, high = (middle, high) if drop(middle, material, deep) < target else (low, middle)
    return low


for name, material in (('usual', USUAL), ('least soot', LEAST), ('most soot', MOST), ('5.3e-13', (5.3e-13, 2.4e-14, 95))):
    print(f'{name}: clean {drop(0, material) / 100:.6f} mbar')
for mbar in (5.0, 6.81, 7.5, 12.0, 40.0, 60.0):
    values = soot(100 * mbar, LEAST, 0.85, True), soot(100 * mbar, USUAL), soot(100 * mbar, MOST, 1.05)
    print(f'{mbar} mbar: ' + ', '.join(f'{1000 * value:.6f}' for value in values) + ' g')
print('7.5 mbar with 3e-13 m2 given and 3 mbar off: most', 1000 * soot(1050, (3e-13, 7e-14, 121.6), 1.05))
