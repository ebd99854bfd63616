/** The header in which a device says its name, in percent-encoded UTF-8; at most 60 characters once decoded. */
export const DEVICE_HEADER = "x-halfturn-device";
export const MAX_DEVICE_NAME = 60;
