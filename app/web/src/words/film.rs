//! Shots, takes, the slate and what filming costs.

use benchslate_core::timing::shots::Standing;

/// The head of the sheet.
pub fn title(build: &str) -> String {
    format!("Shots, {build}")
}

/// Beside it.
pub fn so_many_taken(taken: usize, all: usize) -> String {
    format!("{taken} of {all} taken")
}

/// What stands past the lower edge.
pub fn below() -> &'static str {
    "the card, the film, its costs"
}

/// The keys, read aloud.
pub fn keys() -> &'static str {
    "Shot keys"
}

/// Nothing is planned.
pub fn nothing_yet() -> &'static str {
    "No shots yet"
}

/// Under it.
pub fn nothing_yet_why() -> &'static str {
    "What the film needs, above all what can be had once only: it then stands on the bench before the step that would spoil it, and the next one is a key beside the camera."
}

/// A key.
pub fn new_shot() -> &'static str {
    "New shot"
}

/// Under it.
pub fn a_name() -> &'static str {
    "a name will do"
}

/// Under a new shot's fields.
pub fn a_name_is_enough() -> &'static str {
    "Its name is enough. Length is as it will be seen; a step then takes three real seconds at the camera for each, or as you set it."
}

/// In the empty field of a length.
pub fn length_hint() -> &'static str {
    "40 s"
}

/// In the empty field of a set-up.
pub fn set_up_hint() -> &'static str {
    "15"
}

/// Over the windows.
pub fn against_its_step() -> &'static str {
    "When, against its step"
}

/// The windows, in the order of the form.
pub fn windows() -> [&'static str; 3] {
    ["before", "during", "after"]
}

/// Under "Once only".
pub fn once_note() -> &'static str {
    "can\u{2019}t be set up again; the bench says so in time"
}

/// Under "Nice to have".
pub fn nice_note() -> &'static str {
    "the film can do without it"
}

/// A key.
pub fn shot_it() -> &'static str {
    "Shot it"
}

/// Under it: which shot, which take.
pub fn shot_take(what: &str, take: u32) -> String {
    format!("{what}, take {take}")
}

/// A key.
pub fn hold() -> &'static str {
    "Hold the slate"
}

/// Under it.
pub fn full_screen() -> &'static str {
    "full screen"
}

/// A key.
pub fn waive() -> &'static str {
    "Waive it"
}

/// Under it.
pub fn leave_out() -> &'static str {
    "leave it out"
}

/// The same on a shot that was left out.
pub fn take_in() -> &'static str {
    "Want it"
}

/// Under it.
pub fn after_all() -> &'static str {
    "after all"
}

/// A shot that was left out.
pub fn waived() -> &'static str {
    "left out"
}

/// A shot that came too late.
pub fn missed() -> &'static str {
    "missed"
}

/// Its window is over, but it can be set up again.
pub fn late(window: &str) -> String {
    format!("{window} is over: set it up again")
}

/// What a once-only shot must come before.
pub fn before_begins(step: &str) -> String {
    format!("once only: before {step} begins")
}

/// The same, while its step goes on.
pub fn before_ends(step: &str) -> String {
    format!("once only: before {step} is over")
}

/// Once only, and nothing says when.
pub fn once_only() -> &'static str {
    "once only"
}

/// Once only, and too late.
pub fn too_late(step: &str) -> String {
    format!("once only, missed: {step}")
}

/// Its step was struck out.
pub fn step_struck() -> &'static str {
    "its step was struck out"
}

/// How a shot stands where the line says nothing else.
pub fn standing(standing: Standing) -> &'static str {
    match standing {
        Standing::Waived => waived(),
        Standing::Missed => missed(),
        Standing::Open | Standing::Late | Standing::Ahead | Standing::Taken => "",
    }
}

/// `must` or `nice`.
pub fn need(nice: bool) -> &'static str {
    if nice { "nice" } else { "must" }
}

/// When, against its step.
pub fn at_step(window: usize, step: &str) -> String {
    let words = ["before", "during", "after"];
    format!("{} {step}", words.get(window).copied().unwrap_or_default())
}

/// How long it is to set up; shorter where more stands beside it.
pub fn set_up(minutes: u32, alone: bool) -> String {
    if alone { format!("{minutes} min to set up") } else { format!("{minutes} min") }
}

/// How many takes of what length: `4 × 15 s`, `40 s`, `2 takes`.
pub fn takes_of(takes: u32, seconds: Option<u32>) -> String {
    match (takes, seconds) {
        (1, Some(seconds)) => format!("{seconds} s"),
        (takes, Some(seconds)) => format!("{takes} \u{d7} {seconds} s"),
        (1, None) => "1 take".to_owned(),
        (takes, None) => format!("{takes} takes"),
    }
}

/// What is said of a take that has been had: `clip 412, keeper`.
pub fn clip_and_keeper(clip: &str, keeps: bool) -> String {
    let keeper = if keeps { keeper() } else { "" };
    match (clip.is_empty(), keeper.is_empty()) {
        (true, _) => keeper.to_owned(),
        (false, true) => clip.to_owned(),
        (false, false) => format!("{clip}, {keeper}"),
    }
}

/// A take that is used.
pub fn keeper() -> &'static str {
    "keeper"
}

/// A take's key.
pub fn mark_keeper() -> &'static str {
    "Keeper"
}

/// The same on a keeper.
pub fn no_keeper() -> &'static str {
    "Not it"
}

/// Read aloud.
pub fn key_name(key: &str, what: &str) -> String {
    format!("{key}: {what}")
}

/// A take, and when.
pub fn take_at(number: usize, when: &str) -> String {
    format!("Take {number}, {when}")
}

/// Under it, while nobody has typed its clip.
pub fn no_clip() -> &'static str {
    "no clip yet"
}

/// The clip's form.
pub fn take_title() -> &'static str {
    "Take"
}

/// In its empty field.
pub fn clip_hint() -> &'static str {
    "as the camera calls it"
}

/// A key.
pub fn keep() -> &'static str {
    "Keep"
}

/// There is no such shot.
pub fn no_shot() -> &'static str {
    "No such shot"
}

/// Under it.
pub fn no_shot_why() -> &'static str {
    "It was struck out, or it is on another phone."
}

/// Under a chosen shot.
pub fn put_right() -> &'static str {
    "Put this shot right"
}

/// The row of the camera's card.
pub fn card() -> &'static str {
    "The camera\u{2019}s card"
}

/// Under it.
pub fn card_state(copied: Option<&str>, since: usize) -> String {
    let since = match since {
        0 => "nothing shot since".to_owned(),
        1 => "1 take since".to_owned(),
        many => format!("{many} takes since"),
    };
    match copied {
        Some(when) => format!("copied {when}, {since}"),
        None => {
            format!("never copied, {}", since.replace(" since", "").replace("nothing shot", "nothing on it"))
        }
    }
}

/// Its key.
pub fn copied() -> &'static str {
    "Copied"
}

/// In the journal.
pub fn is_copied() -> &'static str {
    "copied"
}

/// The row of the film.
pub fn the_film() -> &'static str {
    "The film"
}

/// What is known of it.
pub fn film_state(finished: Option<&str>, footage: Option<&str>) -> String {
    match (finished, footage) {
        (Some(finished), Some(footage)) => format!("{finished} min of {footage} shot"),
        (Some(finished), None) => format!("{finished} min"),
        (None, Some(footage)) => format!("{footage} min shot"),
        (None, None) => "length, shot, where to see it".to_owned(),
    }
}

/// The row of what it costs.
pub fn costs() -> &'static str {
    "What filming costs"
}

/// The mark of a take.
pub fn take_kind() -> &'static str {
    "take"
}

/// Under the mark's line: `take 2 of 3`.
pub fn take_of(take: usize, wanted: u32) -> String {
    let wanted = usize::try_from(wanted).unwrap_or(take);
    if wanted > 1 { format!("take {take} of {wanted}") } else { format!("take {take}") }
}

/// The mark of a shot.
pub fn shot_kind() -> &'static str {
    "shot"
}

/// The mark of a card.
pub fn card_kind() -> &'static str {
    "card"
}

/// From an entry to the sheet.
pub fn the_shots() -> &'static str {
    "The shots"
}

/// Under it.
pub fn all_that_is_to_shoot() -> &'static str {
    "all that is to shoot"
}

/// The slate: over the build's title.
pub fn build_of(number: usize, shop: &str) -> String {
    if shop.is_empty() { format!("Build {number}") } else { format!("Build {number}, {shop}") }
}

/// The slate's own name, read aloud.
pub fn slate() -> &'static str {
    "Slate"
}

/// Over its cells.
pub fn slate_cells() -> [&'static str; 4] {
    ["shot", "take", "step", "day"]
}

/// In the cell of the step, where there is none.
pub fn no_step() -> &'static str {
    "\u{2013}"
}

/// Of a mark: the step after it has begun, and it could be taken once only.
pub fn missed_now(what: &str) -> String {
    format!("missed: {what}")
}

/// Its key: away, and nothing was shot.
pub fn no_take() -> &'static str {
    "No take"
}

/// Its key: away, and a take begins.
pub fn away(take: u32) -> String {
    format!("Away, take {take} begun")
}

/// Over it, where the browser can't keep the screen lit.
pub fn may_go_dark() -> &'static str {
    "This browser can\u{2019}t keep the screen lit."
}

/// Beside a change-over: what is too late after it.
pub fn closing(step: &str, ends: bool) -> String {
    if ends { before_ends(step) } else { before_begins(step) }
}

/// Over such a shot, while no clock runs.
pub fn to_shoot() -> &'static str {
    "to shoot"
}

/// The bench's key read aloud.
pub fn shot_key_name(what: &str, take: u32) -> String {
    format!("Shot it: {what}, take {take}")
}

/// The choice of how long a second of footage takes.
pub fn real_seconds() -> &'static str {
    "real seconds for one of footage"
}

/// The head of what filming costs.
pub fn costs_title(build: &str) -> String {
    format!("What filming costs, {build}")
}

/// What stands past the lower edge.
pub fn costs_below() -> &'static str {
    "more stages, and how it is reckoned"
}

/// A row: the film's side of the true cost.
pub fn film_side() -> &'static str {
    "The film\u{2019}s side of the true cost"
}

/// A row.
pub fn film_hours() -> &'static str {
    "Hours for the film alone"
}

/// A row.
pub fn rolled() -> &'static str {
    "Camera rolling while the piece was made"
}

/// A row.
pub fn slowed() -> &'static str {
    "Of that, slower for the camera"
}

/// Its working: `3 h 00 \u{d7} 0.25 \u{f7} 1.25`, in words.
pub fn slowed_by(percent: &str) -> String {
    format!("filming slows work by {percent} %; borne by the film")
}

/// Nobody has said by how much.
pub fn not_said() -> &'static str {
    "not said yet"
}

/// Under it.
pub fn say_it_below() -> &'static str {
    "type below by how much filming slows you"
}

/// Over the rows of stages.
pub fn with_and_without() -> &'static str {
    "With the camera and without, by the item"
}

/// Under a stage.
pub fn pace(with: &str, filmed: usize, without: Option<&str>, unfilmed: usize) -> String {
    let without = without.map(|it| format!("; {it} without ({unfilmed})")).unwrap_or_default();
    format!("{with} filmed ({filmed}){without}")
}

/// Too few builds of a kind.
pub fn too_few(needs: usize) -> String {
    format!("needs {needs} builds each")
}

/// How much slower, or quicker.
pub fn slower(percent: &str, quicker: bool) -> String {
    if quicker { format!("{percent} % quicker") } else { format!("{percent} % slower") }
}

/// All stages together.
pub fn together() -> &'static str {
    "All together"
}

/// Its key.
pub fn use_it(percent: &str) -> String {
    format!("Reckon with {percent} %")
}

/// Under the key.
pub fn as_you_work() -> &'static str {
    "as your own builds say"
}

/// Nothing was filmed that could be compared.
pub fn no_pace() -> &'static str {
    "No stage was done often enough yet both with the camera and without: three builds each. Until then it is asked."
}

/// Over what is still to shoot.
pub fn still_to_shoot() -> &'static str {
    "Still to shoot"
}

/// A row: what must be had.
pub fn musts() -> &'static str {
    "Set-ups and takes, must"
}

/// A row: what is nice to have.
pub fn nices() -> &'static str {
    "Nice to have"
}

/// Under it.
pub fn reckoned(seconds: &str, common: bool) -> String {
    let whose = if common { "common practice" } else { "as you set it" };
    format!("{seconds} real seconds for one of footage, {whose}")
}

/// Over the fields.
pub fn how_reckoned() -> &'static str {
    "How it is reckoned, for the whole shop"
}

/// A field.
pub fn slows_by() -> &'static str {
    "Filming slows work by"
}

/// A field.
pub fn seconds_for_one() -> &'static str {
    "Real seconds for one"
}

/// The mark of a choice.
pub fn set_kind() -> &'static str {
    "set"
}

/// What was set.
pub fn set_to(percent: &str) -> String {
    format!("filming slows work by {percent} %")
}

/// Of a shot, where its build has steps.
pub fn without_a_step() -> &'static str {
    "at no step: the plan leaves no time for it"
}
