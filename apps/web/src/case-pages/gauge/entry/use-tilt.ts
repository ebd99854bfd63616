import { useEffect, useRef, useState } from "react";
import { type PhonePose, type PhoneReading, phoneReading, steadied, upOf } from "../model/phone-tilt.js";

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

/** About half a second of what a browser sends. */
const KEPT = 30;

/** The phone's own tilt, from when it was asked for by a tap. */
export function useTilt(pose: PhonePose) {
  const [tilt, setTilt] = useState<Tilt>({ state: "off" });
  const [isOn, setOn] = useState(false);
  const recent = useRef<readonly number[]>([]);

  useEffect(() => {
    if (!isOn) return;
    recent.current = [];
    setTilt({ state: "waiting" });
    const turned = ({ beta, gamma }: DeviceOrientationEvent) => {
      if (beta === null || gamma === null) return;
      const reading = phoneReading(upOf(beta, gamma), pose);
      if (!reading.ok) {
        recent.current = [];
        return setTilt({ state: "held-wrongly", fault: reading.fault });
      }
      recent.current = [...recent.current, reading.slopeDeg].slice(-KEPT);
      const steady = steadied(recent.current);
      if (steady) setTilt({ state: "reading", ...steady });
    };
    window.addEventListener("deviceorientation", turned);
    return () => window.removeEventListener("deviceorientation", turned);
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
