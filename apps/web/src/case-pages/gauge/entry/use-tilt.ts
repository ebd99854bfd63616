import { useEffect, useRef, useState } from "react";
import { type PhonePose, type PhoneReading, phoneReading, recentSlopes, steadied, type TimedSlope, upOf } from "../model/phone-tilt.js";

/** here: this device may tell its tilt. insecure: it might, but the page came over plain HTTP. none: no such device. */
export type TiltAvailability = "here" | "insecure" | "none";

/** A desk computer also claims to have the event; only a device for fingers is asked. */
export function tiltAvailability(): TiltAvailability {
  if (!window.matchMedia("(pointer: coarse)").matches) return "none";
  if (!window.isSecureContext) return "insecure";
  return "DeviceOrientationEvent" in window ? "here" : "none";
}

export type Tilt =
  | { readonly state: "off" | "asking" | "denied" | "waiting" }
  | { readonly state: "held-wrongly"; readonly fault: (PhoneReading & { readonly ok: false })["fault"] }
  | { readonly state: "reading"; readonly slopeDeg: number; readonly spreadDeg: number };

interface AsksPermission {
  readonly requestPermission?: () => Promise<string>;
}

const TICK_MS = 200;

/** The phone's own tilt, from when it was asked for by a tap. */
export function useTilt(pose: PhonePose) {
  const [tilt, setTilt] = useState<Tilt>({ state: "off" });
  const [isOn, setOn] = useState(false);
  const recent = useRef<readonly TimedSlope[]>([]);

  useEffect(() => {
    if (!isOn) return;
    recent.current = [];
    setTilt({ state: "waiting" });
    const settle = (): void => {
      recent.current = recentSlopes(recent.current, performance.now());
      const steady = steadied(recent.current);
      if (steady) setTilt({ state: "reading", ...steady });
    };
    const turned = ({ beta, gamma }: DeviceOrientationEvent): void => {
      if (beta === null || gamma === null) return;
      const reading = phoneReading(upOf(beta, gamma), pose);
      if (reading.ok) {
        recent.current = [...recent.current, { atMs: performance.now(), slopeDeg: reading.slopeDeg }];
        settle();
      } else {
        recent.current = [];
        setTilt({ state: "held-wrongly", fault: reading.fault });
      }
    };
    const tick = window.setInterval(settle, TICK_MS);
    window.addEventListener("deviceorientation", turned);
    return () => {
      window.clearInterval(tick);
      window.removeEventListener("deviceorientation", turned);
    };
  }, [isOn, pose]);

  const start = async (): Promise<void> => {
    setTilt({ state: "asking" });
    const asks = DeviceOrientationEvent as unknown as AsksPermission;
    const answer = asks.requestPermission ? await asks.requestPermission().catch(() => "denied") : "granted";
    if (answer === "granted") setOn(true);
    else setTilt({ state: "denied" });
  };
  return { tilt, start };
}
