"""Independent check of the boiling point: saturation temperature of IAPWS-IF97, region 4, Eq. 31.

Coefficients from memory, confirmed by the check value of the formulation: 372.755919 K at 0.1 MPa. Not run by the tests.
"""

import math

N = [0, 0.11670521452767e4, -0.72421316703206e6, -0.17073846940092e2, 0.12020824702470e5, -0.32325550322333e7,
     0.14915108613530e2, -0.48232657361591e4, 0.40511340542057e6, -0.23855557567849, 0.65017534844798e3]


def saturation_temperature(megapascal):
    b = megapascal ** 0.25
    e, f, g = b * b + N[3] * b + N[6], N[1] * b * b + N[4] * b + N[7], N[2] * b * b + N[5] * b + N[8]
    d = 2 * g / (-f - math.sqrt(f * f - 4 * e * g))
    return (N[10] + d - math.sqrt((N[10] + d) ** 2 - 4 * (N[9] + N[10] * d))) / 2


print("check", saturation_temperature(0.1))
for kilopascal in (60, 80, 150, 200):
    print(kilopascal, "kPa", saturation_temperature(kilopascal / 1000) - 273.15)
