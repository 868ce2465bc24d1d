// What a tired person types, form by form: every figure, quantity, length of time and day of the forms of stock,
// salvage, tools and money. Refused by its field with a sentence, kept as it was typed, and nothing written.
import assert from "node:assert/strict";
import { fullShop } from "./lib/full.mjs";
import { lines } from "./lib/disk.mjs";
import { journey } from "./lib/journey.mjs";

const NOVEL = "It was a dark and stormy night in the shop. ".repeat(50);
const AMOUNT = ["-3", "1e30", "a lot", "1,234", "12,3,4", NOVEL];
const NONSENSE = {
  amount: AMOUNT,
  // Paid back is below nothing.
  either: AMOUNT.slice(1),
  quantity: ["-3", "7/0", "23 3/", "12 furlongs", "1,234", NOVEL],
  percent: ["-5", "1e3", "half", NOVEL],
  // Of the time at a stage: more than none, all of it at most.
  share: ["-5", "1e3", "half", NOVEL, "0", "120", "30 min"],
  hours: ["soon", "2:75", "-2", "1e30", "2000000"],
  number: ["-2", "1e30", "many", "1,500"],
  day: ["soonish", "2026-02-30", "1026-11-20", "31/31/2026"],
  count: ["2.5", "-1", "two", "1e3"],
};

/**
 * Addresses begin with these; then the key, what is typed before so that only one thing is wrong, the fields, and which key
 * brings a field that isn't there from the beginning.
 */
const STOCK = [
  ["new-lot", "Keep the lot", { "what, or from where": "barn oak", "rough quantity": "10" }, {
    "rough quantity": "quantity", "came on": "day",
  }],
  ["line-lot.", "Keep the lot", { "what, or from where": "barn oak", "how much": "10" }, {
    "how much": "quantity", "price, before tax": "amount", "came on": "day",
  }],
  ["add.shelf.", "Keep", { "How much": "1" }, { "How much": "quantity", Day: "day" }],
  ["return.", "Put it back", { "How much": "1" }, { "How much": "quantity" }],
  ["stock-formula", "Keep it", {}, { From: "day" }],
];
const SALVAGE = [
  ["new-lot", "Keep the lot", { "what, or from where": "barn oak", "rough quantity": "10", "haul, there and back": "10" }, {
    paid: "amount", "haul, there and back": "number", "usable, as you expect": "percent", "same thing new, a bd ft": "amount",
    "fee at the place": "amount", "new: cut to waste": "percent", "new: tax": "percent", tax: "amount",
  }],
  ["find", "Keep", { "what it is": "pews", "or how much in all": "20" }, {
    "or how much in all": "quantity", asked: "amount", "haul, there and back": "number", "same thing new, a bd ft": "amount",
    "new: cut to waste": "percent", usable: "percent", "to reclaim all of it": "count", "fee at the place": "amount", "new: tax": "percent",
  }],
  ["sort.", "Keep the sort", { good: "1" }, { good: "quantity", culled: "quantity" }],
  ["by-product", "Keep it", { "What was it?": "kindling", "came for it": "5" }, { "came for it": "amount" }],
];
const TOOLS = [
  ["add.tool", "Keep", { Name: "Saw" }, {
    Price: "amount", "Sells for at the end": "amount", "Lasts, hours": "hours", "Upkeep, an hour": "amount", "Power, kW": "number",
    Load: "percent", "Hours before": "hours", Day: "day", "Share of sand": "share", "Share of mill": "share",
  }, { "Share of sand": "sand", "Share of mill": "mill" }],
  ["add.blade.", "Keep", { What: "rip", Price: "60", "Lasts, hours": "40" }, { Price: "amount", "Lasts, hours": "hours", Fitted: "day" }],
  ["add.tool_hours.", "Keep", { Ran: "2 h" }, { Ran: "hours", Day: "day" }],
  ["tool-life.", "Keep", { "Hours left": "400" }, { "Hours left": "hours", From: "day" }],
];
const MONEY = [
  ["expense", "Keep it", { "What for": "hire", Paid: "10" }, { Paid: "amount", "Tax on top": "amount" }],
  ["line-expense.", "Keep it", { "What for": "hire", Paid: "10" }, { Paid: "amount" }],
  ["receipt", "Keep", { "Total paid, tax in it": "10" }, { "Total paid, tax in it": "amount" }],
  ["add.monthly_cost", "Keep", { What: "Rent", "A month": "10" }, { "A month": "amount", From: "day", Until: "day", "Tools in it, kWh": "number" }],
  ["add.income.", "Keep", { Expected: "10", Received: "10" }, {
    Expected: "amount", "Expected by": "day", Received: "either", On: "day", "Tax in it": "either", "Fee kept back": "either",
  }],
  ["add.made.", "Keep", { Good: "1" }, { Good: "count", Day: "day", "Scrap fetched": "amount" }],
  ["add.hand_over.", "Keep", { Pieces: "1" }, { Pieces: "count", Day: "day" }],
  ["add.buy_line.", "Keep", { What: "felt" }, { "How much": "quantity", "What it may cost, all of it": "amount" }],
  ["price.", "Expect that", { "Margin, of the price": "30" }, { "Margin, of the price": "percent", "Fee kept back": "percent", "Tax on top": "percent" }],
  ["choices", "Keep", {}, {
    "Vehicle, a km": "amount", "Sales tax": "percent", "A kWh": "amount", "Hours, all": "hours", "Of them, film": "hours",
    "Film, fixed share": "percent", "Filming slows by": "percent",
  }],
];

for (const [subject, forms] of Object.entries({ stock: STOCK, salvage: SALVAGE, tools: TOOLS, money: MONEY })) {
  journey(`forms of ${subject}: nothing that a tired person types is written, and all of it is said by its field`, async (walk) => {
    const { page, thumb, go } = walk;
    const all = await fullShop(walk);
    const build = all.find((at) => at.startsWith("money.")).split(".")[1];
    const [wrong, before] = [[], await lines(page)];
    for (const [place, key, filled, fields, brought = {}] of forms) {
      const at = place.endsWith(".") ? (all.find((it) => it.startsWith(place)) ?? `${place}${build}`) : place;
      await go(at);
      for (const [label, text] of Object.entries(filled)) await thumb.type(label, text);
      for (const [label, kind] of Object.entries(fields)) {
        if (label in brought) await thumb.tap(brought[label]);
        const was = await thumb.field(label).inputValue();
        // The browser's own field of a day takes nothing but a day.
        const calendar = kind === "day" && (await thumb.field(label).getAttribute("type")) === "date";
        for (const typed of calendar ? ["1026-11-20"] : NONSENSE[kind]) {
          await thumb.type(label, typed);
          await thumb.tap(key);
          const said = await thumb.refused(label, /\S/, typed).then(() => "", (why) => why.message.split("\n")[0]);
          if (said) wrong.push(`${place} ${label}: ${typed.slice(0, 20)}: ${said}`);
          // What was kept or left is another sheet: the form again.
          if (said) {
            await go(at);
            for (const [other, text] of Object.entries(filled)) await thumb.type(other, text);
          }
        }
        await thumb.type(label, was);
      }
      for (const label of new Set([...Object.keys(filled), ...Object.keys(fields)])) await thumb.type(label, "");
    }
    assert.deepEqual(wrong, [], "refused by its field");
    assert.deepEqual(await lines(page), before, "nothing was written");
  });
}
