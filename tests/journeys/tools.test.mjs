// Tools: the rate of a run hour with its working, blades, hours by hand, and how long one will still last.
import assert from "node:assert/strict";
import { logHours, startBuild } from "./lib/acts.mjs";
import { journey } from "./lib/journey.mjs";

/** A tool with these fields, and the stages at which it runs, each with its share. */
async function addTool(thumb, name, fields, at = {}) {
  await thumb.place("Shop");
  await thumb.tap(/^(Add a tool|.*book value; what each)/);
  if (await thumb.page.getByRole("heading", { level: 1, name: "Tools" }).count()) await thumb.tap("Add a tool");
  await thumb.type("Name", name);
  for (const [label, text] of Object.entries(fields)) await thumb.type(label, text);
  for (const [stage, share] of Object.entries(at)) {
    await thumb.tap(stage);
    await thumb.type(`Share of ${stage}`, share);
  }
  await thumb.tap("Keep");
  await thumb.kept(`tool ${name}`);
}

async function openTool(thumb, name) {
  await thumb.place("Shop");
  await thumb.tap(/book value; what each/);
  await thumb.tap(new RegExp(`^${name}`));
  await thumb.sheet(name);
}

journey("a run hour is wear, upkeep and power, and a build carries its share of the stage", async ({ thumb, go }) => {
  await startBuild(thumb);
  await go("choices");
  await thumb.type("A kWh", "0.15");
  await thumb.tap("Keep");
  await thumb.kept("A kWh");
  await addTool(
    thumb,
    "Thickness planer",
    { Price: "800", "Sells for at the end": "200", "Lasts, hours": "1500", "Upkeep, an hour": "0.35", "Power, kW": "1.8", Load: "70" },
    { mill: "60" },
  );
  await logHours(thumb, "2 h", "mill");
  await openTool(thumb, "Thickness planer");
  await thumb.key(/^Wear \(800\.00 − 200\.00\) ÷ 1,500 h\s*0\.400/).waitFor();
  await thumb.key(/^\+\s*Upkeep .*0\.350/).waitFor();
  await thumb.key(/^\+\s*Power 1\.8 kW × 0\.7 × 0\.15\s*0\.189/).waitFor();
  await thumb.sees("0.939");
  await thumb.sees("Runs 0.6 of mill; two people at it count once.");
  // 1.2 h at 0.939.
  await thumb.key(/^Gym-floor trays 1\.2 h\s*1\.13/).waitFor();
});

journey("a blade wears by run hours; what is left in it when it comes off is a loss of the shop", async ({ thumb }) => {
  await startBuild(thumb);
  await addTool(thumb, "Saw", { Price: "0", "Lasts, hours": "100" });
  await openTool(thumb, "Saw");
  await thumb.tap("New blade");
  await thumb.type("What", "60-tooth");
  await thumb.type("Price", "64");
  await thumb.type("Lasts, hours", "40");
  await thumb.tap("Keep");
  await thumb.kept("fitted 60-tooth");
  await thumb.sheet("Saw");
  await thumb.tap("Hours by hand");
  await thumb.type("Ran", "10 h");
  await thumb.tap("Keep");
  await thumb.kept("run hours");
  await thumb.key(/^60-tooth on since .*48\.00 left in it\s*16\.00/).waitFor();
  await thumb.tap(/^Blade off/);
  await thumb.kept("off; ");
  await thumb.sees(/a loss of the shop/);
  await thumb.undo();
  await thumb.key(/^60-tooth on since/).waitFor();
});

journey("400 hours left in a tool of 560 wear 0.90 an hour, and what it wore before stays", async ({ thumb }) => {
  await startBuild(thumb);
  await addTool(thumb, "Planer", {
    Price: "800", "Sells for at the end": "200", "Lasts, hours": "1500", "Hours before": "600",
  });
  await openTool(thumb, "Planer");
  await thumb.part(/^book/).or(thumb.page.getByRole("img", { name: /worn 240\.00, book value 560\.00/ })).waitFor();
  await thumb.tap(/^Life/);
  await thumb.type("Hours left", "400");
  await thumb.sees("0.900");
  await thumb.tap("Keep");
  await thumb.kept("its life thought anew");
  await thumb.key(/^Wear .*0\.900/).waitFor();
  await thumb.page.getByRole("img", { name: /book value 560\.00/ }).waitFor();
  await thumb.tap(/^Gone/);
  await thumb.kept("gone from today");
  await thumb.sees(/^gone /);
});

journey("what can't be read of a tool is said by its field and stays typed", async ({ thumb, go }) => {
  await go("add.tool");
  await thumb.type("Lasts, hours", "1,500");
  await thumb.tap("Keep");
  await thumb.refused("Name", "No name yet");
  await thumb.refused("Lasts, hours", "Is it 1500 or 1.5", "1,500");
  await thumb.type("Lasts, hours", "0");
  await thumb.type("Load", "120");
  await thumb.tap("Keep");
  await thumb.refused("Lasts, hours", "More than 0", "0");
  await thumb.refused("Load", "More than all of it", "120");
  await thumb.page.reload();
  await thumb.sheet("New tool");
  await thumb.page.waitForFunction(() => document.querySelector("#load")?.value === "120");
  assert.equal(await thumb.field("Load").inputValue(), "120");
});
