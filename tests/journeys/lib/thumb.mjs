// The thumb: taps and types by role and visible label, counts its taps, and looks.
import assert from "node:assert/strict";
import { setTimeout as pause } from "node:timers/promises";

/** Waits until a condition holds; says what it waited for when it does not. */
export async function until(what, holds, milliseconds = Number(process.env.BENCHSLATE_PATIENCE ?? 10_000)) {
  const end = Date.now() + milliseconds;
  for (;;) {
    const value = await holds();
    if (value) return value;
    if (Date.now() > end) throw new Error(`waited in vain: ${what}`);
    await pause(25);
  }
}

const named = (name) => (typeof name === "string" ? { name, exact: true } : { name });

export class Thumb {
  constructor(page) {
    this.page = page;
    this.taps = 0;
  }

  /** A key or what leads to another sheet, by its words; `where` is the name of the part of the sheet. */
  key(name, where) {
    const from = where ? this.part(where) : this.page;
    return from.getByRole("button", named(name)).or(from.getByRole("link", named(name)));
  }

  /** A named part of the sheet. */
  part(name) {
    const { page } = this;
    const [first, ...rest] = ["region", "group", "navigation", "list"].map((role) => page.getByRole(role, named(name)));
    return rest.reduce((one, other) => one.or(other), first);
  }

  field(label) {
    return this.page.getByLabel(label, { exact: typeof label === "string" });
  }

  async tap(name, where) {
    this.taps += 1;
    await this.key(name, where).tap();
  }

  /** What is typed into a field takes the place of what was there. */
  async type(label, text) {
    await this.field(label).fill(text);
  }

  async choose(label, option) {
    this.taps += 1;
    await this.field(label).selectOption(option);
  }

  /** Taps on one of the five places. */
  async place(name) {
    this.taps += 1;
    await this.part("Places").getByRole("link", { name: new RegExp(`${name}`) }).tap();
  }

  /** One more act is written and safe on the disk; `what` stands in its mark. */
  async kept(what) {
    await this.mark().filter({ hasText: what }).filter({ has: this.page.getByText("kept", { exact: true }) }).waitFor();
  }

  /** What the last mark says. */
  mark() {
    return this.page.getByRole("region", { name: "Last mark" }).getByRole("status");
  }

  async undo() {
    this.taps += 1;
    await this.page.getByRole("region", { name: "Last mark" }).getByRole("button", { name: "Undo" }).tap();
    await this.mark().filter({ hasText: "taken back" }).waitFor();
  }

  /** The sheet that is on view, by its head. */
  async sheet(title) {
    await this.page.getByRole("heading", { level: 1, name: title }).waitFor();
  }

  /** A text that is on view. */
  async sees(text) {
    await this.page.getByText(text).filter({ visible: true }).first().waitFor();
  }

  /** A text that goes, or was not there. */
  async misses(text) {
    await until(`no more ${text}`, async () => (await this.page.getByText(text).filter({ visible: true }).count()) === 0);
  }

  /** The one slate with a running clock reads so; for a screen reader the digits are the time in words. */
  async clock(reads) {
    const slate = this.page.getByRole("region", { name: "Clock running" });
    await slate.filter({ hasText: reads }).waitFor();
  }

  /** The error by a field, which keeps what was typed. */
  async refused(label, says, typed) {
    const field = this.field(label);
    await until(`${label} is marked as wrong`, async () => (await field.getAttribute("aria-invalid")) === "true");
    await this.page.getByRole("alert").filter({ hasText: says }).waitFor();
    if (typed !== undefined) assert.equal(await field.inputValue(), typed, `${label} keeps what was typed`);
  }
}
