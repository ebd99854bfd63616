"""Writes scipy-reference.golden.json: what SciPy makes of a signal that anybody can compute again.

Run with Debian's python3-scipy; made with SciPy 1.17.1 and NumPy 2.4.6. The test reads only the JSON.
"""
import json
import numpy as np
from scipy import signal

RATE = 512.0
COUNT = 6000
n = np.arange(COUNT)
t = n / RATE
# Two tones, a sweep, an offset, and a rough sequence in place of noise.
x = (
    0.7
    + 1.3 * np.cos(2 * np.pi * 40.0 * t + 0.3)
    + 0.4 * np.sin(2 * np.pi * 97.3 * t)
    + 0.8 * np.cos(2 * np.pi * (20.0 * t + 3.0 * t * t))
    + 0.2 * np.sin(n * n * 0.7)
)

SETTINGS = [
    ("boxcar", "boxcar", 512, 0),
    ("hann", "hann", 512, 256),
    ("hann", "hann", 1024, 768),
    ("hamming", "hamming", 256, 128),
    ("blackman", "blackman", 512, 256),
    ("blackman-harris", "blackmanharris", 1024, 512),
    ("nuttall", "nuttall", 512, 384),
    ("flattop", "flattop", 1024, 512),
]

out = {"rate": RATE, "count": COUNT, "welch": [], "spectrogram": None}
for ours, theirs, length, overlap in SETTINGS:
    for detrend in ("constant", False):
        kw = dict(fs=RATE, window=signal.get_window(theirs, length, fftbins=True), nperseg=length, noverlap=overlap, detrend=detrend)
        _, density = signal.welch(x, scaling="density", **kw)
        _, power = signal.welch(x, scaling="spectrum", **kw)
        keep = np.r_[0:length // 2 + 1:7, length // 2]
        out["welch"].append({
            "window": ours, "blockLength": length, "overlap": overlap / length, "detrend": "mean" if detrend else "none",
            "lines": keep.tolist(), "density": density[keep].tolist(), "meanSquare": power[keep].tolist(),
        })
f, times, s = signal.spectrogram(x, fs=RATE, window=signal.get_window("hann", 256, fftbins=True), nperseg=256, noverlap=128, detrend="constant", scaling="spectrum", mode="psd")
rows = [0, 11, 30, s.shape[1] - 1]
out["spectrogram"] = {"blockLength": 256, "overlap": 0.5, "times": times.tolist(), "rows": rows, "meanSquare": [s[:, r].tolist() for r in rows]}

with open("scipy-reference.golden.json", "w") as file:
    json.dump(out, file)
    file.write("\n")
