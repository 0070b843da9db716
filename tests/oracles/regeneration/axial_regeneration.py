"""Axial regeneration solved independently: the same balances, written for soot load and wall temperature themselves, by Radau.

numpy 2.4.6, scipy 1.17.1. Writes axial_regeneration.json beside it; not run by the tests.
"""

import json
import pathlib

import numpy as np
from scipy.integrate import solve_ivp

R = 8.31446261815324
CARBON = 0.012011


def simulate(case):
    n = case["cells"]
    bed, gas, law = case["bed"], case["gas"], case["law"]
    heat_capacity = bed["bulkDensity"] * bed["specificHeat"]
    share_co = case["carbonMonoxideShare"]
    heat = ((1 - share_co) * 393500 + share_co * 110500) / CARBON
    edges = np.arange(n + 1) / n

    def burn(soot, wall, flow, oxygen):
        carried = flow / (gas["molarMass"] * bed["volume"])  # mol of gas through the wall per m3 and s
        per_fraction = law["preExponential"] * np.exp(-law["activationEnergy"] / (R * wall)) / law["referenceFraction"]
        need = (1 - share_co / 2) * per_fraction * soot / CARBON  # mol of oxygen per m3, s and mole fraction
        diffusing = bed.get("oxidantTransferCoefficient", 0.0) * bed["filtrationAreaPerVolume"]
        if diffusing == 0.0:
            return carried * oxygen * CARBON / (1 - share_co / 2) * -np.expm1(-need / carried)
        used = np.empty(n)
        flux = carried * oxygen  # oxygen in the channel, per filter volume; it falls to zero at the plug
        for i in range(n):
            left = 1 - edges[i]
            fraction = flux / (carried * left)
            # layer: carried y + diffusing (y - z) = (carried + need) z
            layer = (carried + diffusing) / (carried + diffusing + need[i])
            power = diffusing / carried * (1 - layer)
            right = 1 - edges[i + 1]
            after = fraction * (right / left) ** power if i < n - 1 else 0.0
            # mean of fraction ((1 - x)/left)^power over the cell
            mean = (left * fraction - right * after) / (1 + power) * n
            used[i] = need[i] * layer * mean
            flux = carried * right * after
        return used * CARBON / (1 - share_co / 2)

    def slope(t, y, segment):
        soot, wall = y[:n], y[n:]
        (t0, g0, f0, x0), (t1, g1, f1, x1) = segment
        w = (t - t0) / (t1 - t0)
        flow, feed, oxygen = g0 + w * (g1 - g0), f0 + w * (f1 - f0), x0 + w * (x1 - x0)
        burning = burn(soot, wall, flow, oxygen)  # kg of soot per m3 and s
        capacity = flow * gas["specificHeat"]
        ntu = bed["heatTransferCoefficient"] * bed["filtrationAreaPerVolume"] * bed["volume"] / capacity
        inlet, outlet = np.empty(n + 1), np.empty(n + 1)
        inlet[0], outlet[0] = feed, 0.0
        for i in range(n):
            down = (1 - edges[i + 1]) / (1 - edges[i]) if i < n - 1 else 0.0
            up = edges[i] / edges[i + 1]
            inlet[i + 1] = wall[i] + (inlet[i] - wall[i]) * down**ntu
            outlet[i + 1] = wall[i] + (outlet[i] - wall[i]) * up ** (1 + ntu)
        enthalpy_in = capacity * (1 - edges) * inlet
        enthalpy_out = capacity * edges * outlet
        gained = (enthalpy_in[:-1] - enthalpy_in[1:]) - (enthalpy_out[1:] - enthalpy_out[:-1])
        flux = bed["axialConductivity"] * np.diff(wall) * n / bed["length"]
        conducted = np.diff(np.concatenate(([0.0], flux, [0.0]))) * n / bed["length"]
        warming = gained * n / bed["volume"] + conducted + heat * burning
        return np.concatenate((-burning, warming / heat_capacity))

    y = np.concatenate((np.full(n, case["sootLoad"]), np.full(n, case["initialTemperature"])))
    rows = []
    feed = [tuple(point) for point in case["feed"]]
    for first, last in zip(feed, feed[1:]):
        if last[0] <= first[0]:
            continue
        times = [t for t in case["times"] if first[0] < t <= last[0]]
        run = solve_ivp(slope, (first[0], last[0]), y, method="Radau", rtol=1e-9, atol=1e-9, t_eval=sorted(set(times + [last[0]])), args=((first, last),))
        assert run.success, run.message
        for t, column in zip(run.t, run.y.T):
            if t in times:
                rows.append({"time": float(t), "soot": [round(float(x), 8) for x in column[:n]], "temperature": [round(float(x), 6) for x in column[n:]]})
        y = run.y[:, -1]
    return rows


def bed(volume, length, bulk, conductivity, diffusion=False):
    pitch = 0.0254 / 200**0.5
    width = pitch - 0.305e-3
    return {
        "volume": volume,
        "length": length,
        "bulkDensity": bulk,
        "specificHeat": 1100.0,
        "axialConductivity": conductivity,
        "filtrationAreaPerVolume": 2 * width / pitch**2,
        "heatTransferCoefficient": 2.976 * 0.0596 / width,
        **({"oxidantTransferCoefficient": 2.976 * 1.89e-3 / width} if diffusion else {}),
    }


gas = {"specificHeat": 1110.0, "molarMass": 0.02896559}
whole_filter = {"preExponential": 16000.0, "activationEnergy": 108000.0, "referenceFraction": 0.1}
surface = {"preExponential": 2.479e8, "activationEnergy": 150000.0, "referenceFraction": 0.1}
cases = [
    {
        "name": "ramp of silicon carbide, whole-filter law",
        "cells": 40,
        "bed": bed(0.003, 0.15, 800.0, 5.0),
        "gas": gas,
        "law": whole_filter,
        "carbonMonoxideShare": 0.0,
        "sootLoad": 6.0,
        "initialTemperature": 573.15,
        "feed": [[0, 0.04, 573.15, 0.08], [300, 0.04, 893.15, 0.08], [1200, 0.04, 893.15, 0.08]],
        "times": [100, 200, 300, 350, 400, 450, 500, 600, 800, 1200],
    },
    {
        "name": "drop to idle of cordierite, surface law",
        "cells": 40,
        "bed": bed(0.0025, 0.15, 450.0, 0.4),
        "gas": gas,
        "law": surface,
        "carbonMonoxideShare": 0.5,
        "sootLoad": 5.0,
        "initialTemperature": 573.15,
        "feed": [[0, 0.04, 573.15, 0.06], [120, 0.04, 853.15, 0.06], [125, 0.04, 853.15, 0.06], [125, 0.011, 523.15, 0.16], [600, 0.011, 523.15, 0.16]],
        "times": [60, 90, 110, 120, 125, 130, 140, 160, 200, 300, 450, 600],
    },
    {
        "name": "low flow with diffusion, whole-filter law",
        "cells": 40,
        "bed": bed(0.003, 0.15, 800.0, 5.0, diffusion=True),
        "gas": gas,
        "law": whole_filter,
        "carbonMonoxideShare": 0.2,
        "sootLoad": 6.0,
        "initialTemperature": 573.15,
        "feed": [[0, 0.01, 573.15, 0.08], [180, 0.01, 893.15, 0.08], [1200, 0.01, 893.15, 0.08]],
        "times": [120, 240, 300, 360, 420, 480, 600, 900, 1200],
    },
]

for case in cases:
    case["rows"] = simulate(case)
    hottest = max(max(row["temperature"]) for row in case["rows"])
    print(case["name"], "hottest sampled", hottest - 273.15, "soot left", np.mean(case["rows"][-1]["soot"]) / case["sootLoad"])
path = pathlib.Path(__file__).with_suffix(".json")
path.write_text(json.dumps({"cases": cases}) + "\n")

# One point of the map of peak temperatures: cordierite, 12 cells, ramp of 180 s to 620 °C at 144 kg/h, drop at 240 s.
point = {
    "cells": 12,
    "bed": bed(0.003, 0.15, 450.0, 0.4, diffusion=True),
    "gas": gas,
    "law": whole_filter,
    "carbonMonoxideShare": 0.0,
    "sootLoad": 6.0,
    "initialTemperature": 573.15,
    "feed": [[0, 0.04, 573.15, 0.08], [180, 0.04, 893.15, 0.08], [240, 0.04, 893.15, 0.08], [240, 40 / 3600, 523.15, 0.16], [600, 40 / 3600, 523.15, 0.16]],
    "times": [t / 10 for t in range(1, 6001)],
}
print("peak of the map point, °C:", max(max(row["temperature"]) for row in simulate(point)) - 273.15)

# Runaway index of the example, by hand.
k = 16000 * np.exp(-108000 / (R * 873.15)) * 0.08 / 0.1
print("runaway index:", np.e * k * 0.018 * (393500 / CARBON) * 108000 / (R * 873.15**2) / (140 / 3600 * 1110))

# Burn-off of a log: 300 °C to 600 °C in 5 min, 10 min at 600 °C, by adaptive quadrature, oxygen 8 %.
from scipy.integrate import quad

rate = lambda kelvin: 16000 * np.exp(-108000 / (R * kelvin)) * 0.8
ramp = quad(lambda t: rate(573.15 + t), 0, 300, epsabs=1e-13)[0]
print("expected burn-off:", 1 - np.exp(-(ramp + 600 * rate(873.15))))

# The ramp of the first case, with diffusion: soot left after 20 min.
again = simulate({**cases[0], "bed": bed(0.003, 0.15, 800.0, 5.0, diffusion=True)})
print("burn-off of the ramp with diffusion:", 1 - np.mean(again[-1]["soot"]) / 6.0)
