"""The same work in NumPy and SciPy: order maps of three axes, and the amplitudes of all orders by least squares, block by block.

Called by run.ts with the folder of its recording; prints the seconds it took. Needs python3-scipy.
"""
import sys
import time
import numpy as np
from scipy import interpolate, signal

folder, rate, axes, turns, highest = sys.argv[1], float(sys.argv[2]), int(sys.argv[3]), int(sys.argv[4]), float(sys.argv[5])
orders = [float(k) for k in sys.argv[6].split(",")]
block_turns = float(sys.argv[7])


def work():
    pulses = np.fromfile(f"{folder}/pulses.f64")
    angle_of = interpolate.PchipInterpolator(pulses, 2 * np.pi * np.arange(len(pulses)))
    time_of = interpolate.PchipInterpolator(2 * np.pi * np.arange(len(pulses)), pulses)
    total = 0.0
    factor = 2
    per_turn = 64
    angles = np.arange(0, 2 * np.pi * (len(pulses) - 1), 2 * np.pi / per_turn)
    times = time_of(angles)
    raw = [np.fromfile(f"{folder}/axis-{axis}.f64") for axis in range(axes)]
    for x in raw:
        fewer = signal.decimate(x, factor, ftype="fir")
        spline = interpolate.CubicSpline(np.arange(len(fewer)) * factor / rate, fewer)
        length = turns * per_turn
        _, _, s = signal.spectrogram(spline(times), fs=per_turn, window="hann", nperseg=length, noverlap=length // 2, scaling="spectrum")
        total += s[: int(highest * turns)].sum()
    thinned = [signal.decimate(x, 6, ftype="fir") for x in raw]
    t = np.arange(len(thinned[0])) * 6 / rate
    keep = (t >= pulses[0]) & (t <= pulses[-1])
    theta = angle_of(t[keep])
    ys = np.stack([x[keep] for x in thinned], 1)
    edges = np.searchsorted(theta, np.arange(0, theta[-1], 2 * np.pi * block_turns))
    for a, b in zip(edges[:-1], edges[1:]):
        th = theta[a:b]
        columns = [np.ones(b - a), np.linspace(-1, 1, b - a)]
        for k in orders:
            columns += [np.cos(k * th), np.sin(k * th)]
        design = np.stack(columns, 1)
        solution, *_ = np.linalg.lstsq(design, ys[a:b], rcond=None)
        residual = ys[a:b] - design @ solution
        total += np.abs(np.fft.rfft(residual * signal.windows.hann(b - a, sym=False)[:, None], axis=0)).sum() + np.abs(solution).sum()
    return total


work()
started = time.perf_counter()
if not np.isfinite(work()):
    sys.exit(1)
print(time.perf_counter() - started)
