//! What the shop costs every month, and what hours bear of it.

/// The head, and the heading in the shop.
pub fn title() -> &'static str {
    "The shop, an hour worked"
}

/// What stands past the lower edge.
pub fn below() -> &'static str {
    "month by month"
}

/// The keys, read aloud.
pub fn keys() -> &'static str {
    "Month keys"
}

/// A rate: borne by every hour on a build or lot.
pub fn all_hours() -> &'static str {
    "All hours"
}

/// A rate: borne by film hours.
pub fn film_hours() -> &'static str {
    "Film hours, on top"
}

/// Its working.
pub fn over_hours(cost: &str, hours: Option<&str>) -> String {
    match hours {
        Some(hours) => format!("{cost} a month \u{f7} {hours} h"),
        None => format!("{cost} a month"),
    }
}

/// In the place of a rate.
pub fn no_hours() -> &'static str {
    "no hours a month"
}

/// Over the costs.
pub fn every_month() -> &'static str {
    "Every month"
}

/// No cost yet.
pub fn none_yet() -> &'static str {
    "Rent, insurance, power, a storage plan: nothing written down yet."
}

/// Under a cost: who bears it, from when to when, and whether the tools bear more power than its bill.
pub fn in_force(film: bool, from: Option<&str>, to: Option<&str>, beyond: bool) -> String {
    let mut parts = Vec::new();
    if film {
        parts.push("film hours only".to_owned());
    }
    parts.extend(from.map(|day| format!("from {day}")));
    parts.extend(to.map(|day| format!("until {day}")));
    if beyond {
        parts.push("the tools\u{2019} power comes to more".to_owned());
    }
    parts.join(", ")
}

/// Over the months.
pub fn month_by_month() -> &'static str {
    "Not borne, month by month"
}

/// A month.
pub fn month(name: &str, under_way: bool) -> String {
    if under_way { format!("{name}, under way") } else { name.to_owned() }
}

/// Under a month.
pub fn actual_and_borne(actual: &str, borne: &str) -> String {
    format!("cost {actual}, borne by hours {borne}")
}

/// Under the list.
pub fn what_is_borne() -> &'static str {
    "What hours don\u{2019}t bear is a cost of the year, and of no build. Below zero: they bore more than it cost."
}

/// A key.
pub fn normal_hours() -> &'static str {
    "Hours"
}

/// Under it.
pub fn of_a_month() -> &'static str {
    "of a month"
}

/// A key.
pub fn add() -> &'static str {
    "Add a cost"
}

/// A row of the shop while there is none.
pub fn add_first() -> &'static str {
    "What it costs every month"
}

/// Under it.
pub fn add_first_note() -> &'static str {
    "rent, insurance; borne by the hours worked"
}
