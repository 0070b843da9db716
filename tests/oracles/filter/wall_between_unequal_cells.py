"""Darcy flow through the walls in two dimensions: how wide is a wall that is 1.75 mm wide on the inlet side and 1.25 mm on
the outlet side, and how much gas comes from the corner cells when there are three inlet cells per outlet cell?

Laplace equation by finite volumes on one period of the checkerboard, pressure 1 on inlet walls and 0 on outlet walls.
Python 3, numpy, scipy.sparse. Not run by the tests.
"""
import numpy as np
import scipy.sparse as sp
import scipy.sparse.linalg as linalg


def conductance(ratio, wall, pitch, cells_per_pitch):
    """Flow per inlet cell, length, pressure and permeability over viscosity."""
    outlet = 2 * (pitch - wall) / (1 + ratio)
    inlet = ratio * outlet
    n = 2 * cells_per_pitch
    x = (np.arange(n) + 0.5) * 2 * pitch / n
    gx, gy = np.meshgrid(x, x, indexing='ij')
    kind = np.zeros((n, n), int)
    for i in range(3):
        for j in range(3):
            is_inlet = (i + j) % 2 == 0
            width = inlet if is_inlet else outlet
            inside = (abs(gx - i * pitch) < width / 2) & (abs(gy - j * pitch) < width / 2)
            kind[inside] = 1 if is_inlet else 2
    solid = kind == 0
    number = -np.ones((n, n), int)
    number[solid] = np.arange(solid.sum())
    rows, columns = [], []
    diagonal, right = np.zeros(solid.sum()), np.zeros(solid.sum())
    i, j = np.where(solid)
    steps = ((1, 0), (-1, 0), (0, 1), (0, -1))
    for di, dj in steps:
        ni, nj = (i + di) % n, (j + dj) % n
        here, there = number[i, j], kind[ni, nj]
        inner = there == 0
        rows += list(here[inner])
        columns += list(number[ni, nj][inner])
        diagonal[here[inner]] += 1
        np.add.at(diagonal, here[~inner], 2)
        np.add.at(right, here[~inner], 2 * (there[~inner] == 1))
    matrix = sp.csr_matrix((-np.ones(len(rows)), (rows, columns))) + sp.diags(diagonal)
    pressure = linalg.spsolve(matrix.tocsc(), right)
    flow = 0.0
    for di, dj in steps:
        out = kind[(i + di) % n, (j + dj) % n] == 2
        flow += np.sum(2 * pressure[number[i, j]][out])
    return inlet, outlet, flow / 2


# Square cells of 1.8 mm pitch touch at a ratio of 1.286 with 0.2 mm and of 1.5 with 0.3 mm of wall.
for wall, ratios in ((0.2e-3, (1.0, 1.1, 1.2, 1.25)), (0.3e-3, (1.0, 1.2, 1.4))):
    for ratio in ratios:
        inlet, outlet, g = conductance(ratio, wall, 1.8e-3, 180)
        print(f'wall {wall * 1e3:.1f} mm, {inlet * 1e3:.4f} and {outlet * 1e3:.4f} mm: {g:.5g};'
              f' over 4 x inlet width/wall {g / (4 * inlet / wall):.4f}, over 4 x narrower width/wall {g / (4 * outlet / wall):.4f}')

inlet, outlet, g = conductance(1.4, 0.3e-3, 1.8e-3, 180)
cells = 0.01 / 1.8e-3 ** 2
print('1 L of 100 mm, 1.8 mm pitch, 0.3 mm wall, ratio 1.4, 0.05 m3/s, 28 uPa s, 3e-13 m2: wall drop Pa',
      2.8e-5 * 0.05 / (3e-13 * g * 0.1 * cells / 2))


def three_to_one(wall, pitch, cells_per_pitch):
    """Flow per outlet cell over that of four flat walls, and the part of it that comes from the corner cell."""
    width = pitch - wall
    n = 2 * cells_per_pitch
    x = (np.arange(n) + 0.5) * 2 * pitch / n
    gx, gy = np.meshgrid(x, x, indexing='ij')
    kind = np.zeros((n, n), int)
    for i in range(3):
        for j in range(3):
            inside = (abs(gx - i * pitch) < width / 2) & (abs(gy - j * pitch) < width / 2)
            kind[inside] = 2 if i % 2 == 0 and j % 2 == 0 else 3 if i % 2 == 1 and j % 2 == 1 else 1
    solid = kind == 0
    number = -np.ones((n, n), int)
    number[solid] = np.arange(solid.sum())
    i, j = np.where(solid)
    rows, columns = [], []
    diagonal, right = np.zeros(solid.sum()), np.zeros(solid.sum())
    steps = ((1, 0), (-1, 0), (0, 1), (0, -1))
    for di, dj in steps:
        ni, nj = (i + di) % n, (j + dj) % n
        here, there = number[i, j], kind[ni, nj]
        inner = there == 0
        rows += list(here[inner])
        columns += list(number[ni, nj][inner])
        diagonal[here[inner]] += 1
        np.add.at(diagonal, here[~inner], 2)
        np.add.at(right, here[~inner], 2 * (there[~inner] != 2))
    matrix = sp.csr_matrix((-np.ones(len(rows)), (rows, columns))) + sp.diags(diagonal)
    pressure = linalg.spsolve(matrix.tocsc(), right)
    flow = corner = 0.0
    for di, dj in steps:
        there = kind[(i + di) % n, (j + dj) % n]
        flow += np.sum(2 * pressure[number[i, j]][there == 2])
        corner += np.sum(2 * (1 - pressure[number[i, j]][there == 3]))
    return flow / (4 * width / wall), corner / flow


for wall in (0.2e-3, 0.3e-3):
    over_flat, corner = three_to_one(wall, 1.8e-3, 180)
    print(f'three to one, wall {wall * 1e3:.1f} mm: {over_flat:.4f} of four flat walls, {100 * corner:.1f} % from the corner cell')
