"""Independent values for the soot balance, integrated numerically instead of in closed form.

numpy 2.x, scipy 1.x (see the versions printed first). Not run by the tests: the values stand in tests/reference/cases/soot.
"""

import math

import numpy
import scipy
from scipy.integrate import solve_ivp
from scipy.optimize import brentq

R = 8.314462618


def rate(celsius, no2_ppm, oxygen):
    kelvin = celsius + 273.15
    passive = 4200 * math.exp(-45500 / (R * kelvin)) * (no2_ppm * 1e-6) ** 1.13 if no2_ppm > 0 else 0.0
    active = 16000 * math.exp(-108000 / (R * kelvin)) * oxygen / 0.10
    return passive + active


def drive(mass, pattern, passes):
    for _ in range(passes):
        for minutes, grams_per_hour, k in pattern:
            run = solve_ivp(lambda t, m: [grams_per_hour / 3600 - k * m[0]], (0, minutes * 60), [mass], method="DOP853", rtol=1e-12, atol=1e-14)
            mass = run.y[0, -1]
    return mass


print("numpy", numpy.__version__, "scipy", scipy.__version__)
town_and_road = [(25, 1.5, rate(180, 40, 0.14)), (15, 2.5, rate(310, 250, 0.10))]
print("mass after 20 passes of town and road, from 4 g:", drive(4, town_and_road, 20))
settled = brentq(lambda m: drive(m, town_and_road, 1) - m, 1, 200, xtol=1e-12)
print("settled mass, g:", settled)


def reach(mass, trigger):
    time = 0.0
    while True:
        for minutes, grams_per_hour, k in town_and_road:
            event = lambda t, m: m[0] - trigger
            event.terminal = True
            run = solve_ivp(lambda t, m: [grams_per_hour / 3600 - k * m[0]], (0, minutes * 60), [mass], method="DOP853", rtol=1e-12, atol=1e-14, events=event)
            time += run.t[-1]
            mass = run.y[0, -1]
            if run.status == 1:
                return time
        assert time < 1e7


print("hours to 14 g from 4 g:", reach(4, 14) / 3600)
hot = rate(350, 300, 0.09)


def settled_peak(minutes):
    pattern = town_and_road + [(minutes, 3.0, hot)]
    start = brentq(lambda m: drive(m, pattern, 1) - m, 0.1, 200, xtol=1e-11)
    return max(drive(start, pattern[: n + 1], 1) for n in range(3))


print("hot minutes that keep it below 14 g:", brentq(lambda x: settled_peak(x) - 14, 1, 300, xtol=1e-9))
print("balance temperature of 12 g, 0.5 mg/s, 300 ppm, 10 %:", brentq(lambda c: rate(c, 300, 0.10) * 12 - 0.5e-3, 150, 600, xtol=1e-10))
