// The browser of the journeys: Chromium with the flags it needs in a container, as a phone would hold it.
import { chromium } from "playwright-core";

export const FLAGS = [
  "--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run", "--disable-background-networking",
  "--disable-component-update", "--disable-sync", "--disable-dev-shm-usage",
];

export const EXECUTABLE = process.env.BENCHSLATE_CHROMIUM || "/usr/bin/chromium";

/** The bench in use: Friday 20 November 2026, five past eight in the morning, in Toronto. */
export const FRIDAY_MORNING = "2026-11-20T08:05:10-05:00";

/** What every journey has unless it says otherwise: the smallest phone in use, held by a thumb. */
export const PHONE = {
  viewport: { width: 360, height: 640 },
  hasTouch: true,
  isMobile: true,
  locale: "en-CA",
  timezoneId: "America/Toronto",
};

export function launch(more = {}) {
  return chromium.launch({ executablePath: EXECUTABLE, args: FLAGS, ...more });
}

/** A browser with a profile of its own on the disk, that can be closed and started again. */
export function launchOn(profile, phone = {}) {
  return chromium.launchPersistentContext(profile, { executablePath: EXECUTABLE, args: FLAGS, ...PHONE, ...phone });
}
