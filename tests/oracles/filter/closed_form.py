"""Independent values for the closed-form pressure drop and the geometry of a wall-flow filter.

Written from Konstandopoulos et al., SAE 2000-01-1016, Eqs 1, A1-A15, and KONA 26 (2008) Eqs 8-10, in the papers'
own form with the filter volume (the kernels use wall area and channel counts).
Python 3, mpmath 1.3. Not run by the tests.
"""
from mpmath import mp, mpf, sqrt, log, pi, findroot

mp.dps = 30
F = mpf('28.454')
INCH = mpf('0.0254')


def sutherland(t):
    return mpf('1.716e-5') * (t / 273) ** mpf('1.5') * (273 + 111) / (t + 111)


def drop(q, mu, rho, v, length, alpha, ws, k0, soot=0, k_soot=1, rho_soot=1, zeta=0, beta=0, ash=0, k_ash=1, rho_ash=1):
    n = v / (2 * (alpha + ws) ** 2 * length)
    on_ash = sqrt(alpha ** 2 - ash / (n * length * rho_ash))
    inner = sqrt(on_ash ** 2 - soot / (n * length * rho_soot))
    bracket = (ws / (k0 * alpha) + log(on_ash / inner) / (2 * k_soot) + log(alpha / on_ash) / (2 * k_ash)
               + 4 * F * length ** 2 / 3 * (1 / inner ** 4 + 1 / alpha ** 4))
    viscous = mu * q / (2 * v) * (alpha + ws) ** 2 * bracket
    inertial = rho * q ** 2 * (alpha + ws) ** 4 / (v ** 2 * alpha ** 2) * (beta * ws / 4 + 2 * zeta * (length / alpha) ** 2)
    return viscous + inertial


def show(label, value, digits=8):
    print(f'{label:60s} {mp.nstr(value, digits)}')


# Filter A of the paper: clear width 1.44 mm, wall 0.356 mm, 144 mm, 2.1 m2.
alpha, ws, length = mpf('1.44e-3'), mpf('0.356e-3'), mpf('0.144')
n_in = mpf('2.1') / (4 * alpha * length)
volume = 2 * n_in * (alpha + ws) ** 2 * length
show('filter A: cells per m2', 1 / (alpha + ws) ** 2, 12)
show('filter A: volume L', volume * 1000, 12)
q = mpf('5.85') * n_in * alpha ** 2
show('filter A: volume flow m3/s at 5.85 m/s', q, 12)
for w in ('0', '0.1e-3', '0.2e-3', '0.3e-3', '0.4e-3'):
    w = mpf(w)
    mass = 4 * w * (alpha - w) * length * n_in * 97
    value = drop(q, mpf('2.87e-5'), mpf('0.64'), volume, length, alpha, ws, mpf('5.3e-13'), mass, mpf('3.2e-14'), 97)
    show(f'filter A: w = {mp.nstr(w * 1000, 3)} mm: soot g', mass * 1000, 12)
    show(f'filter A: w = {mp.nstr(w * 1000, 3)} mm: drop Pa', value)

# Heavy-duty cordierite, 10.5 x 12 in, 100 cpsi, 17 mil.
ws = 17 * INCH / 1000
alpha = INCH / 10 - ws
length = 12 * INCH
volume = pi / 4 * (mpf('10.5') * INCH) ** 2 * length
q = mpf('0.236') * mpf('533.15') / mpf('273.15')
show('heavy duty: volume flow m3/s', q, 12)
for name, k0 in (('EX-47', '2.4e-13'), ('EX-54', '3.3e-13')):
    value = drop(q, mpf('2.789e-5'), mpf('0.66'), volume, length, alpha, ws, mpf(k0))
    show(f'heavy duty {name}: clean drop Pa', value)
    show(f'heavy duty {name}: resistance 1/m3', value / (mpf('2.789e-5') * q))

# A passenger-car filter with everything switched on, default gas by Sutherland.
t, p = mpf('523.15'), mpf('101325')
rho = p * mpf('0.02896559') / (mpf('8.31446261815324') * t)
ws = 12 * INCH / 1000
alpha = INCH / sqrt(mpf(200)) - ws
full_length = mpf('0.152')
length = full_length - 2 * mpf('0.004')
volume = pi / 4 * mpf('0.144') ** 2 * length
value = drop(mpf(180) / 3600, sutherland(t), rho, volume, length, alpha, ws, mpf('3e-13'), mpf('0.015'), mpf('2.4e-14'), 95,
             mpf('0.628'), mpf('1e6'), mpf('0.010'), mpf('7.4e-14'), 400)
show('passenger car with ash, Forchheimer, losses: drop Pa', value)
clean = drop(mpf(180) / 3600, sutherland(t), rho, volume, length, alpha, ws, mpf('3e-13'), zeta=mpf('0.628'), beta=mpf('1e6'))
show('passenger car clean, Forchheimer, losses: drop Pa', clean)

# Inverse: soot mass that makes filter A read 2005.8 Pa and 6437.9 Pa is the mass printed above; here one with ash.
target = mpf(8000)
mass = findroot(lambda m: drop(mpf(180) / 3600, sutherland(t), rho, volume, length, alpha, ws, mpf('3e-13'), m, mpf('2.4e-14'), 95,
                               mpf('0.628'), 0, mpf('0.010'), mpf('7.4e-14'), 400) - target, (mpf('0.03'), mpf('0.05')), solver='anderson')
show('passenger car: soot g for 8 kPa with 10 g ash', mass * 1000)

# Resistance with Sutherland viscosity.
show('R for 36 kPa, 231 m3/h, 200 degC', mpf(36000) / (sutherland(mpf('473.15')) * mpf(231) / 3600))

# Ash layer above 15 um, so that the deep-bed model must put all soot into the cake: 24 g of ash.
value = drop(mpf(180) / 3600, sutherland(t), rho, volume, length, alpha, ws, mpf('3e-13'), mpf('0.015'), mpf('2.4e-14'), 95,
             mpf('0.628'), mpf('1e6'), mpf('0.024'), mpf('7.4e-14'), 400)
n = volume / (2 * (alpha + ws) ** 2 * length)
show('passenger car, 24 g of ash: drop Pa', value)
show('passenger car, 24 g of ash: layer um', (alpha - sqrt(alpha ** 2 - mpf('0.024') / (n * length * 400))) / 2 * 1e6)
