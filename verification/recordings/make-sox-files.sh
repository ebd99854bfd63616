#!/bin/sh
# Makes the sound files of verification/recordings/sox and, beside each, its samples as sox itself decodes them (64-bit floats, little-endian).
# Needs sox 14.4.2; the check does not. Run in verification/recordings; -R keeps the noise the same each time.
set -eu
cd "$(dirname "$0")/sox"
make() {
  name=$1 channels=$2
  shift 2
  sox -R -r 8000 -c "$channels" -n "$@" "$name.wav" synth 101s sine 440 pinknoise vol 0.9
  sox -R "$name.wav" -t f64 -L "$name.f64"
}
make pcm8 1 -b 8 -e unsigned-integer
make pcm16 2 -b 16 -e signed-integer
make pcm24 1 -b 24 -e signed-integer
make pcm24-three 3 -b 24 -e signed-integer
make pcm32 2 -b 32 -e signed-integer
make float32 2 -b 32 -e floating-point
make float64 1 -b 64 -e floating-point
# A remark puts a LIST chunk beside the data.
sox -R -r 44100 -c 1 -n -b 16 --comment "made with a remark" remark.wav synth 77s sine 1000 vol 0.5
sox remark.wav -t f64 -L remark.f64
# Written to a pipe, sox cannot go back to fill in the length.
sox -R -r 8000 -c 1 -n -b 16 -t wav - synth 50s sine 300 vol 0.7 2>/dev/null | cat > open-length.wav
sox -R -r 8000 -c 1 -n -b 16 -t raw - synth 50s sine 300 vol 0.7 | sox -r 8000 -c 1 -b 16 -e signed-integer -t raw - -t f64 -L open-length.f64
