"""Independent values for the carbon balance: the forward problem, from lambda to what an analyser would read.

Python 3, numpy 2.4.6. Not run by the tests; its output stands in the case files as independent-code.
"""
import numpy as np

M_AIR, M_H2O, M_C, M_H, M_O = 28.96559, 18.01528, 12.0107, 1.00794, 15.9994
X_O2, X_CO2, X_N2, X_AR = 0.209445, 0.000375, 0.78084, 0.00934


def forward(lam, alpha, beta, humidity, fuel_g_per_s):
    carbon = fuel_g_per_s / (M_C + alpha * M_H + beta * M_O)  # mol/s
    air = lam * carbon * (1 + alpha / 4 - beta / 2) / X_O2
    water_in = air * humidity * M_AIR / M_H2O
    c, h = carbon + air * X_CO2, alpha * carbon + 2 * water_in
    o = beta * carbon + 2 * air * (X_O2 + X_CO2) + water_in
    rows = np.array([[1, 0, 0], [0, 2, 0], [2, 1, 2]], float)  # CO2, H2O, O2
    co2, h2o, o2 = np.linalg.solve(rows, [c, h, o])
    dry = co2 + o2 + air * (X_N2 + X_AR)
    wet = dry + h2o
    air_mass = air * M_AIR * (1 + humidity) * 3.6
    print(
        f"lambda {lam} alpha {alpha} beta {beta} H {humidity}: CO2 dry {100 * co2 / dry:.8f} % wet {100 * co2 / wet:.8f} %"
        f" water per dry {h2o / dry:.8f} exhaust {wet:.8f} mol/s air {air_mass:.6f} kg/h exhaust {air_mass + fuel_g_per_s * 3.6:.6f} kg/h"
    )


forward(2.0, 1.86, 0.0, 0.0, 1.0)
forward(3.5, 1.80, 0.0, 0.01071, 2.0)
forward(1.5, 1.90, 0.1, 0.012, 5.0)
