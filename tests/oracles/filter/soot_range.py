"""Independent soot masses of a passenger-car filter (200 cpsi, 12 mil, 144 x 152 mm) from a drop, with the usual and with the
least and most permeable published walls and soot cakes.

Closed form of Konstandopoulos et al., SAE 2000-01-1016, Eq. 1 with entrance and exit as in KONA 26 (2008), Eq. 8, and bisection.
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
USUAL, LEAST, MOST = (3e-13, 2.4e-14, 95), (2.4e-13, 1.8e-14, 91), (1e-12, 3.2e-14, 97)


def drop(mass, material, zeta=0.628):
    k0, ks, packing = material
    inner = sqrt(alpha ** 2 - mass / (inlets * length * packing))
    viscous = ws / (k0 * alpha) + log(alpha / inner) / (2 * ks) + 4 * 28.454 * length ** 2 / 3 * (1 / inner ** 4 + 1 / alpha ** 4)
    head = rho * q ** 2 * pitch ** 4 / (volume ** 2 * alpha ** 2)
    return mu * q / (2 * volume) * pitch ** 2 * viscous + head * 2 * zeta * (length / alpha) ** 2


def soot(measured, material):
    if measured <= drop(0, material):
        return 0.0
    low, high = 0.0, inlets * length * material[2] * alpha ** 2 * (1 - 1e-9)
    for _ in range(200):
        middle = (low + high) / 2
        low, high = (middle, high) if drop(middle, material) < measured else (low, middle)
    return low


for name, material in (('usual', USUAL), ('least soot', LEAST), ('most soot', MOST), ('5.3e-13', (5.3e-13, 2.4e-14, 95))):
    print(f'{name}: clean {drop(0, material) / 100:.6f} mbar')
for mbar in (5.0, 6.81, 7.5, 12.0, 40.0, 60.0):
    print(f'{mbar} mbar: ' + ', '.join(f'{1000 * soot(100 * mbar, material):.5f}' for material in (LEAST, USUAL, MOST)) + ' g')
print('7.5 mbar with 3e-13 m2 given and 3 mbar off: most', 1000 * soot(1050, (3e-13, 3.2e-14, 97)))
