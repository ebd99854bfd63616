"""The same work in NumPy and SciPy: order maps of three axes, a look at every sample, and the amplitudes of all orders with their uncertainties, by least squares, block by block.

Called by run.ts with the folder of its recording; prints the seconds it took, and what it found. Needs python3-scipy.
"""
import json
import sys
import time
import numpy as np
from scipy import fft, interpolate, signal

folder, rate, axes, turns, highest = sys.argv[1], float(sys.argv[2]), int(sys.argv[3]), int(sys.argv[4]), float(sys.argv[5])
orders = np.array([float(k) for k in sys.argv[6].split(",")])
block_turns, factor = float(sys.argv[7]), int(sys.argv[8])

MAP_FACTOR, PER_TURN = 2, 64
# A Hann window spreads a line's noise over 1.5; how far around an order its noise is read, and what the fit has emptied, in lines of one over the block's length.
SPREAD, REACH, EMPTIED = 1.5, 8, 1.6


def order_maps(raw, time_of, total_turns):
    angles = np.arange(0, 2 * np.pi * total_turns, 2 * np.pi / PER_TURN)
    times = time_of(angles)
    length = turns * PER_TURN
    maps = []
    for x in raw:
        fewer = signal.decimate(x, MAP_FACTOR, ftype="fir")
        spline = interpolate.CubicSpline(np.arange(len(fewer)) * MAP_FACTOR / rate, fewer)
        _, _, s = signal.spectrogram(spline(times), fs=PER_TURN, window="hann", nperseg=length, noverlap=length // 2, scaling="spectrum")
        maps.append(s[: int(highest * turns) + 1])
    return maps


def clipped(x):
    """Samples that are no numbers, and samples in runs of three or more at either end of the scale."""
    at_end = np.concatenate(([0], ((x >= x.max()) | (x <= x.min())).view(np.int8), [0]))
    edges = np.flatnonzero(np.diff(at_end))
    runs = edges[1::2] - edges[::2]
    return x.size - np.count_nonzero(np.isfinite(x)), runs[runs >= 3].sum()


def noise_around(power, spacing, line, low, high):
    """Mean of each channel's residual power around each order, without the lines that orders nearly at a standstill have emptied."""
    frequencies = np.arange(len(power)) * spacing
    still = (high - low) < 3 * line
    emptied = (frequencies[:, None] > low[still] - EMPTIED * line) & (frequencies[:, None] < high[still] + EMPTIED * line)
    usable = ~emptied.any(1) & (frequencies >= EMPTIED * line)
    sums = np.vstack([np.zeros(power.shape[1]), np.cumsum(power * usable[:, None], axis=0)])
    counts = np.concatenate([[0], np.cumsum(usable)])
    a = np.maximum(1, np.ceil((low - REACH * line) / spacing)).astype(int)
    b = np.minimum(len(power) - 1, np.floor((high + REACH * line) / spacing).astype(int) + 1)
    count = np.maximum(1, counts[b] - counts[a])
    return (sums[b] - sums[a]) / count[:, None], 2 * count * spacing / (SPREAD * line)


def fit(raw, angle_of, begin, end):
    thinned = [signal.decimate(x, factor, ftype="fir") for x in raw]
    t = np.arange(len(thinned[0])) * factor / rate
    keep = (t >= begin) & (t <= end)
    theta = angle_of(t[keep])
    ys = np.stack([x[keep] for x in thinned], 1)
    edges = np.searchsorted(theta, np.arange(0, theta[-1], 2 * np.pi * block_turns))
    value, variance, residual_squares, noise_units = 0.0, 0.0, 0.0, 0.0
    halves = [[], []]
    count = len(edges) - 1
    middle = np.median(np.diff(edges))
    for a, b in zip(edges[:-1], edges[1:]):
        th, y = theta[a:b], ys[a:b]
        phases = th[:, None] * orders
        design = np.concatenate([np.ones((b - a, 1)), np.linspace(-1, 1, b - a)[:, None], np.cos(phases), np.sin(phases)], axis=1)
        covariance = np.linalg.inv(design.T @ design + 1e-10 * (b - a) * np.eye(design.shape[1]))
        solution = covariance @ (design.T @ y)
        residual = y - design @ solution
        size = fft.next_fast_len(b - a, real=True)
        window = signal.windows.hann(b - a, sym=False)
        power = np.abs(fft.rfft(residual * window[:, None], size, axis=0)) ** 2 / (window**2).sum()
        speeds = np.diff(th[:: max(1, (b - a) // 8)]) / max(1, (b - a) // 8) * rate / factor / (2 * np.pi)
        line, spacing = rate / factor / (b - a), rate / factor / size
        noise, _ = noise_around(power, spacing, line, orders * speeds.min(), orders * speeds.max())
        halves[int(b - a < middle)].append(power.mean(1))
        n = len(orders)
        cosine, sine = np.arange(2, 2 + n), np.arange(2 + n, 2 + 2 * n)
        aa, bb, ab = covariance[cosine, cosine][:, None] * noise, covariance[sine, sine][:, None] * noise, covariance[cosine, sine][:, None] * noise
        c, s = solution[cosine], solution[sine]
        of_square = aa**2 + 2 * ab**2 + bb**2
        value += (c * c + s * s - aa - bb) / count
        variance += np.maximum(4 * (c * c * aa + 2 * c * s * ab + s * s * bb) - 2 * of_square, 2 * of_square) / count**2
        noise_units += (c * c * bb - 2 * c * s * ab + s * s * aa) / (aa * bb - ab * ab)
        residual_squares += (residual**2).sum(0)
    amplitude = np.sqrt(np.maximum(0, value))
    return amplitude, np.sqrt(variance) / (2 * np.sqrt(amplitude**2 + np.sqrt(variance) / 2)), residual_squares, noise_units, halves


def work():
    pulses = np.fromfile(f"{folder}/pulses.f64")
    counted = 2 * np.pi * np.arange(len(pulses))
    raw = [np.fromfile(f"{folder}/axis-{axis}.f64") for axis in range(axes)]
    maps = order_maps(raw, interpolate.PchipInterpolator(counted, pulses), len(pulses) - 1)
    checks = [clipped(x) for x in raw]
    return maps, checks, fit(raw, interpolate.PchipInterpolator(pulses, counted), pulses[0], pulses[-1])


work()
started = time.perf_counter()
found = work()
seconds = time.perf_counter() - started
amplitudes, uncertainties, *_ = found[2]
first_order = [float(one[turns].mean()) for one in found[0]]
print(json.dumps({"seconds": seconds, "firstOrder": first_order, "amplitudes": amplitudes.tolist(), "uncertainties": uncertainties.tolist()}))
