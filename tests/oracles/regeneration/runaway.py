"""Critical soot load and peaks of a well mixed filter, without the closed form of the index.

The critical load is where max over T of (heat removed - heat released) crosses zero, searched numerically; the peaks are
integrated step by step with soot and oxygen used up. Only the standard library: fixed steps of Runge and Kutta, 1 ms to 10 ms.
"""
import math

R, M_C, M_G = 8.314462618, 0.012011, 0.02896559
A, E, X_REF = 16000.0, 108000.0, 0.1
HEAT, C_GAS = 393500 / M_C, 1110.0


def k(t, x):
    return A * math.exp(-E / (R * t)) * x / X_REF


def steady_exists(load, volume, flow, x, gas):
    """Whether heat removed exceeds heat released at some temperature above that of the gas, soot never used up."""
    return any(
        flow * C_GAS * (t - gas) >= k(t, x) * load * volume * HEAT for t in (gas + i * 0.002 for i in range(1, 100_000))
    )


def critical_load(volume, flow, x, gas):
    low, high = 0.0, 60.0
    for _ in range(45):
        middle = (low + high) / 2
        if steady_exists(middle, volume, flow, x, gas):
            low = middle
        else:
            high = middle
    return low


def peak(load, volume, flow, x, gas, density, heat_capacity, step=0.005, duration=3600.0):
    """Highest temperature from a start as hot as the gas, soot and oxygen running out."""
    supply = flow / M_G * x

    def rates(t, m):
        rate = k(t, x)
        need = rate * m * volume / M_C / supply if supply > 0 else 0.0
        rate *= -math.expm1(-need) / need if need > 1e-12 else 1.0
        return (flow * C_GAS * (gas - t) + rate * m * volume * HEAT) / (volume * density * heat_capacity), -rate * m

    t, m, best, time = gas, load, gas, 0.0
    while time < duration:
        a = rates(t, m)
        b = rates(t + step / 2 * a[0], m + step / 2 * a[1])
        c = rates(t + step / 2 * b[0], m + step / 2 * b[1])
        d = rates(t + step * c[0], m + step * c[1])
        t += step / 6 * (a[0] + 2 * b[0] + 2 * c[0] + d[0])
        m += step / 6 * (a[1] + 2 * b[1] + 2 * c[1] + d[1])
        best = max(best, t)
        time += step
        if time > 30 and t < best - 5:
            break
    return best


if __name__ == "__main__":
    flow, idle = 140 / 3600, 40 / 3600
    gas = 873.15
    print("critical load at 140 kg/h, 8 %:", critical_load(3e-3, flow, 0.08, gas))
    print("critical load at 40 kg/h, 16 %:", critical_load(3e-3, idle, 0.16, gas))
    for load in (5.5, 6.0, 10.0):
        print(load, "g/L SiC peaks, degC:", peak(load, 3e-3, flow, 0.08, gas, 800, 1100) - 273.15, peak(load, 3e-3, idle, 0.16, gas, 800, 1100) - 273.15)
    print("6 g/L cordierite peaks, degC:", peak(6.0, 3e-3, flow, 0.08, gas, 450, 1100) - 273.15, peak(6.0, 3e-3, idle, 0.16, gas, 450, 1100) - 273.15)
