"""Independent values for the compressible form and the slip correction.

Compressible: Konstandopoulos and Papaioannou, KONA 26 (2008), App. A.3 to A.9, step by step from the outlet in mass flow.
Slip: Konstandopoulos et al., SAE 2000-01-1016, App. II, A17 to A20.
Python 3, mpmath 1.3. Not run by the tests.
"""
from mpmath import mp, mpf, sqrt, log, exp, pi

mp.dps = 30
F, INCH, R, M = mpf('28.454'), mpf('0.0254'), mpf('8.31446261815324'), mpf('0.02896559')


def sutherland(t):
    return mpf('1.716e-5') * (t / 273) ** mpf('1.5') * (273 + 111) / (t + 111)


def compressible(p1, t, q1, mu, volume, length, alpha, ws, k0, mass, k_soot, rho_soot, zeta, beta):
    n = volume / (2 * (alpha + ws) ** 2 * length)
    inner = sqrt(alpha ** 2 - mass / (n * length * rho_soot))
    m_dot = q1 * p1 * M / (R * t)
    k = m_dot * R * t / M
    g = (alpha + ws) ** 2 / volume
    p2 = sqrt(p1 ** 2 + mpf(8) / 3 * zeta * m_dot * k * g ** 2 / alpha ** 2 * (length / alpha) ** 2)
    p3 = sqrt(p2 ** 2 + mu * k * g * 4 * F * length ** 2 / (3 * alpha ** 4))
    p4 = sqrt(p3 ** 2 + mu / k0 * k * g * ws / alpha + beta * m_dot * k * g ** 2 * ws / (2 * alpha ** 2))
    p5 = sqrt(p4 ** 2 + mu / k_soot * k * g * log(alpha / inner) / 2)
    p6 = sqrt(p5 ** 2 + mu * k * g * 4 * F * length ** 2 / (3 * inner ** 4))
    p7 = sqrt(p6 ** 2 + mpf(4) / 3 * zeta * m_dot * k * g ** 2 / alpha ** 2 * (length / alpha) ** 2)
    return p7 - p1, p2 - p1, p3 - p2, p4 - p3, p5 - p4, p6 - p5, p7 - p6


def show(label, value, digits=8):
    print(f'{label:60s} {mp.nstr(value, digits)}')


alpha, ws, length = mpf('1.44e-3'), mpf('0.356e-3'), mpf('0.144')
volume = mpf('2.35201166667e-3')
for grams in (0, mpf('48.37875'), 65):
    values = compressible(mpf(101325), mpf('553.15'), mpf('0.0307125'), mpf('2.87e-5'), volume, length, alpha, ws, mpf('5.3e-13'),
                          mpf(grams) / 1000, mpf('3.2e-14'), 97, mpf('0.628'), mpf('1e7'))
    print(f'filter A, {mp.nstr(mpf(grams), 8)} g: total, expansion, outlet, wall with Forchheimer, soot, inlet, contraction:')
    print('   ', [mp.nstr(v, 8) for v in values])
    # The same mass flow as a volume flow before the filter and halfway between before and behind.
    p1, q1 = mpf(101325), mpf('0.0307125')
    print('    flow before, in the middle m3/s:', mp.nstr(q1 * p1 / (p1 + values[0]), 10), mp.nstr(q1 * p1 / (p1 + values[0] / 2), 10))

mean_free_path = lambda mu, p, t: mu / p * sqrt(pi * R * t / (2 * M))
slip = lambda kn: 1 + kn * (mpf('1.257') + mpf('0.4') * exp(-mpf('1.1') / kn))
p = mpf(101325)
for celsius in (20, 200, 400, 600):
    t = mpf(celsius) + mpf('273.15')
    show(f'mean free path at {celsius} degC, nm', mean_free_path(sutherland(t), p, t) * 1e9)
base = mpf(295)
for t in (341, 401, 456, 507, 549, 601, 650):
    t = mpf(t)
    ratio = lambda x: slip(2 * mean_free_path(sutherland(x), p, x) / mpf('500e-9'))
    show(f'500 nm: drop at {mp.nstr(t, 3)} K over that at 295 K', sutherland(t) * t / ratio(t) * ratio(base) / (sutherland(base) * base), 7)
t1, t2 = mpf('553.15'), mpf('723.15')
factor = lambda x: slip(2 * mean_free_path(sutherland(x), p, x) / mpf('25e-9'))
show('25 nm: permeability at 450 degC from 3.2e-14 at 280 degC', mpf('3.2e-14') * factor(t2) / factor(t1))
