//! How a line or a figure of the cost was worked out: `3 h 00 × 26.00`, `tolls 4.00`, a sentence over a kind.

/// Hours × what a month costs ÷ its hours.
pub fn month_over(cost: &str, hours: &str) -> String {
    format!("{cost} a month \u{f7}\u{a0}{hours} h")
}

/// Hours that tools ran: `26 h 30 run`.
pub fn hours_run(hours: &str) -> String {
    format!("{hours} run")
}

/// A tool's run.
pub fn ran(hours: &str, duty: &str) -> String {
    format!("{hours}, runs {duty} of it")
}

/// What wore off.
pub fn wear(figure: &str) -> String {
    format!("wear {figure}")
}

/// The blade's part.
pub fn blade(figure: &str) -> String {
    format!("blade {figure}")
}

/// Upkeep and power.
pub fn upkeep_and_power(figure: &str) -> String {
    format!("upkeep and power {figure}")
}

/// A share of one-off work: `104.00, for 22 of 60`.
pub fn for_so_many(figure: &str, good: u32, run: u32) -> String {
    format!("{figure}, for {good} of {run}")
}

/// Kept back by whoever passed it on.
pub fn fee_off(figure: &str) -> String {
    format!("fee {figure}")
}

/// How tools are worked out.
pub fn how_tools() -> &'static str {
    "Run hours, each at wear, blade, upkeep and power."
}

/// How overhead is worked out.
pub fn how_overhead() -> &'static str {
    "Hours, each at what the shop costs in a normal month."
}

/// How one-off work is shared.
pub fn how_one_off() -> &'static str {
    "Jigs, templates and design, spread over all that will be made with them."
}

/// A line of the journal: `Sat 7 Feb, Wren 3 h 00`.
pub fn line(day: &str, what: &str) -> String {
    format!("{day}, {what}")
}

/// Who worked how long.
pub fn worked(name: &str, hours: &str) -> String {
    format!("{name} {hours}")
}

/// Somebody who is not there any more.
pub fn somebody() -> &'static str {
    "somebody"
}

/// From when to when: `09:00 to 12:00`.
pub fn from_to(from: &str, to: &str) -> String {
    format!("{from} to {to}")
}

/// A clock: `since 08:05`.
pub fn since(from: &str) -> String {
    format!("since {from}")
}

/// How long the camera ran.
pub fn rolling(hours: &str) -> String {
    format!("rolling {hours}")
}

/// Multiplied by.
pub fn times(figure: &str) -> String {
    format!("\u{d7}\u{a0}{figure}")
}

/// `10 bd ft × 4.25`.
pub fn at_a_unit(quantity: &str, figure: &str) -> String {
    format!("{quantity} \u{d7}\u{a0}{figure}")
}

/// Own hours in stock.
pub fn hours_in_it(hours: &str) -> String {
    format!("{hours} in it")
}

/// Stock that came back.
pub fn came_back(quantity: &str) -> String {
    format!("{quantity} came back")
}

/// A drive.
pub fn drive(km: &str) -> String {
    format!("{km} km")
}

/// A drive of which the length is not known.
pub fn some_drive() -> &'static str {
    "a drive"
}

/// A receipt of which nobody said from whom.
pub fn receipt() -> &'static str {
    "receipt"
}

/// Tolls and the like.
pub fn tolls(figure: &str) -> String {
    format!("tolls {figure}")
}

/// Parts of a drive borne here.
pub fn share(part: u64, whole: u64) -> String {
    format!("{part} of {whole} parts")
}

/// The price of a lot.
pub fn paid(figure: &str) -> String {
    format!("paid {figure}")
}

/// Fees and freight.
pub fn fees(figure: &str) -> String {
    format!("fees {figure}")
}

/// Tax that stays in the cost.
pub fn tax(figure: &str) -> String {
    format!("tax {figure}")
}

/// Discount.
pub fn discount(figure: &str) -> String {
    format!("less {figure}")
}

/// `120.00 × 69 ÷ 112`.
pub fn taken_of(of: &str, part: &str, whole: &str) -> String {
    format!("{of} \u{d7}\u{a0}{part} \u{f7}\u{a0}{whole}")
}

/// A share.
pub fn per_cent(share: &str) -> String {
    format!("{share} %")
}

/// What getting new stock ready to cut wastes.
pub fn waste(share: &str) -> String {
    format!("waste {share}")
}

/// Share of a delivery.
pub fn delivery(figure: &str) -> String {
    format!("delivery {figure}")
}

/// Joins the parts of a working.
pub fn working(parts: &[String]) -> Option<String> {
    (!parts.is_empty()).then(|| parts.join("; "))
}

/// How labour is worked out.
pub fn how_labour() -> &'static str {
    "Hours, each at that person\u{2019}s rate on that day."
}

/// How stock drawn by name is worked out.
pub fn how_lot() -> &'static str {
    "What was drawn takes its share of all that the lot cost."
}

/// How stock of an item is worked out.
pub fn how_item() -> &'static str {
    "At what it cost on the shelf when it was drawn: by the average, or what came first goes first."
}

/// How lots not drawn are worked out.
pub fn how_not_drawn() -> &'static str {
    "What was paid for the lots, less what went into the build."
}

/// What the hours in the timber are.
pub fn how_timber() -> &'static str {
    "Hauling and reclaiming hours that came with the stock."
}

/// How an hour's earning is worked out.
pub fn how_hour_earned() -> &'static str {
    "The sum of these, divided by your own hours, those in the timber too."
}

/// The number that a sum is divided by, its sign in the column of signs: `÷ good ones 22`.
pub fn good_ones() -> &'static str {
    "good ones"
}

/// Likewise: `÷ own hours, those in the timber too 93 h 37`.
pub fn own_hours_and_timber() -> &'static str {
    "own hours, those in the timber too"
}

/// Likewise.
pub fn own_hours_in_timber() -> &'static str {
    "own hours in the timber"
}

/// Hours of one side.
pub fn of_labour(hours: &str) -> String {
    format!("{hours} of labour")
}

/// What the hours of a side are.
pub fn how_sides() -> &'static str {
    "Hours for both are shared out; one-off work and hours in the timber stand apart."
}

/// How the cost of one good item is worked out.
pub fn how_item_cost() -> &'static str {
    "What all of them bear, divided by the good ones; the one-off share beside it."
}
