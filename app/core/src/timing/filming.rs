//! What filming does to the hours: own filmed against unfilmed work at the same stage, and what it adds to a build.
//!
//! A build's work at a stage of the piece counts as **filmed** where the camera rolled for at least half of it, as
//! **unfilmed** where it never did; what lies between, one-off work and hours logged as an amount (nobody knows whether
//! the camera was there) are left out. Each is taken by the finished item, so that a batch can stand beside a single
//! piece; of several builds the middle one counts. With [`NEEDS`] builds or more of each kind a stage says how much
//! slower it is; all stages together, weighed by how often they were filmed, give `s`. Source: our own rule.
//!
//! Worked example: three builds sanded in an hour an item without a camera, three in 75 minutes with one: 25 % slower.
//!
//! Not here: money (`costing`); what shots add (`shots`).

use super::worked::{Owned, Worked, owned};
use crate::{
    journal::{
        Id, Shop,
        kinds::{Bearer, Role, SettingKey, Side},
    },
    measure::{Day, Dec, InOrder, Instant, Map, Quantity, Ratio, Seconds, fixed},
};

/// Builds that are needed of each kind before a stage says anything.
pub const NEEDS: usize = 3;

/// A stage with the camera and without.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Pace {
    /// The stage.
    pub stage: Id,
    /// Builds whose work at it was filmed.
    pub filmed: usize,
    /// Builds whose work at it was not.
    pub unfilmed: usize,
    /// For an item, filmed: the middle build.
    pub with: Option<Seconds>,
    /// For an item, without.
    pub without: Option<Seconds>,
    /// How much more it takes, as a share of what it takes without; below zero it was quicker. None: too few builds.
    pub slower: Option<Quantity>,
}

/// All stages that were filmed or could have been, and what they say together.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Paces {
    /// Those with work of either kind, the most filmed first.
    pub stages: Vec<Pace>,
    /// How much slower work is with the camera there; none: too little is known.
    pub slower: Option<Quantity>,
}

impl Paces {
    /// `s` to the hundredth, as it would be set; none where too little is known, or work was no slower.
    pub fn to_set(&self) -> Option<Dec> {
        let share = Ratio::share(self.slower?.to_decimal()).filter(|it| !it.is_zero())?;
        Some(share.hundredth())
    }
}

/// What filming adds to the hours of a build.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct Adds {
    /// Hours for the film alone.
    pub film: Seconds,
    /// Work on the piece while the camera rolled.
    pub rolled: Seconds,
    /// Of that, what the camera cost: s ÷ (1 + s). None: nobody has said by how much it slows.
    pub slowed: Option<Seconds>,
}

/// By how much filming slows work down, as it was set; none: nobody has said.
pub fn set(shop: &Shop, last: Day) -> Option<Ratio> {
    let text = shop.settings.on(SettingKey::SlowDown, last).and_then(|text| Dec::parse(text).ok());
    text.and_then(|share| Ratio::share(share.0))
}

#[derive(Clone, Copy, Default)]
struct Sum {
    worked: i64,
    rolled: i64,
}

/// Filmed against unfilmed, over all builds up to a moment.
pub fn paces(shop: &Shop, as_of: Instant) -> Paces {
    let mut sums: Map<(Id, Id), Sum> = Map::new();
    let (rows, pieces) = owned(shop, as_of);
    for piece in &pieces {
        let Some((stage, build)) = counts(shop, &rows, piece) else { continue };
        let sum = sums.entry((stage, build)).or_default();
        sum.worked = sum.worked.saturating_add(piece.to.since(piece.from).0);
        sum.rolled = sum.rolled.saturating_add(rolled(shop, piece, as_of));
    }
    let mut stages: Map<Id, [Vec<Seconds>; 2]> = Map::new();
    for ((stage, build), sum) in sums.iter() {
        let items = shop.builds.get(build).map_or(1, |it| i64::from(it.items.max(1)));
        let an_item = Seconds(sum.worked.checked_div(items).unwrap_or(sum.worked));
        let [filmed, unfilmed] = stages.entry(*stage).or_default();
        if sum.rolled == 0 {
            unfilmed.push(an_item);
        } else if sum.rolled.saturating_mul(2) >= sum.worked {
            filmed.push(an_item);
        }
    }
    let pace = |(stage, [filmed, unfilmed]): (&Id, &mut [Vec<Seconds>; 2])| Pace {
        stage: *stage,
        filmed: filmed.len(),
        unfilmed: unfilmed.len(),
        with: middle(filmed),
        without: middle(unfilmed),
        slower: None,
    };
    let mut all: Vec<Pace> = stages.iter_mut().map(pace).filter(|it| it.filmed > 0).collect();
    all.iter_mut().for_each(|it| it.slower = known(it).and_then(|(more, base)| share(more, base)));
    all.order_by_key(|it| (std::cmp::Reverse(it.filmed), it.stage));
    let weighed = |it: &Pace| {
        let many = i128::try_from(it.filmed).unwrap_or(0);
        known(it).map(|(more, base)| (more.saturating_mul(many), base.saturating_mul(many)))
    };
    let (more, base) = all
        .iter()
        .filter_map(weighed)
        .fold((0_i128, 0_i128), |sum, it| (sum.0.saturating_add(it.0), sum.1.saturating_add(it.1)));
    Paces { slower: share(more, base), stages: all }
}

/// How many seconds more, and of how many.
fn known(it: &Pace) -> Option<(i128, i128)> {
    let enough = it.filmed >= NEEDS && it.unfilmed >= NEEDS;
    let (with, without) = (it.with.filter(|_| enough)?, it.without?);
    Some((i128::from(with.0.saturating_sub(without.0)), i128::from(without.0)))
}

fn share(more: i128, base: i128) -> Option<Quantity> {
    if base == 0 {
        return None;
    }
    fixed::mul_div(more, fixed::SCALE, base).map(Quantity::from_micros)
}

/// The middle one; of an even number what lies between the two in the middle.
pub(super) fn middle(all: &mut [Seconds]) -> Option<Seconds> {
    all.order_by_key(|it| it.0);
    let half = all.len() / 2;
    let upper = all.get(half)?;
    if !all.len().is_multiple_of(2) {
        return Some(*upper);
    }
    let lower = all.get(half.checked_sub(1)?)?;
    Some(Seconds(lower.plus(*upper).0 / 2))
}

/// The stage and build of a piece of work that can be compared.
fn counts(shop: &Shop, rows: &[Worked], piece: &Owned) -> Option<(Id, Id)> {
    let row = rows.get(piece.stretch)?;
    let one_off = shop.stretches.get(piece.stretch).is_some_and(|it| it.one_off);
    let filming = matches!(
        shop.stages.get(&row.stage).and_then(|it| it.role),
        Some(Role::Shoot | Role::Edit | Role::Admin | Role::Haul)
    );
    match row.bearer {
        Bearer::Build(build) if row.side == Side::Piece && !one_off && !filming => Some((row.stage, build)),
        Bearer::Build(_) | Bearer::Lot(_) | Bearer::Shop => None,
    }
}

/// How long the camera rolled within a piece of work.
fn rolled(shop: &Shop, piece: &Owned, as_of: Instant) -> i64 {
    let Some(stretch) = shop.stretches.get(piece.stretch) else { return 0 };
    let within = stretch.rolling.iter().map(|span| {
        let (from, to) = (span.from.max(piece.from), span.to.unwrap_or(as_of).min(piece.to));
        if from < to { to.since(from).0 } else { 0 }
    });
    within.fold(0, i64::saturating_add)
}

/// What filming adds to the hours of a build; `slower`: s, where it is known.
pub fn adds(shop: &Shop, build: Id, as_of: Instant, slower: Option<Ratio>) -> Adds {
    let (rows, pieces) = owned(shop, as_of);
    let mine = |row: &&Worked| row.bearer == Bearer::Build(build) && row.side == Side::Film;
    let film = rows.iter().filter(mine).fold(Seconds::ZERO, |sum, row| sum.plus(row.seconds));
    let of_piece = |it: &&Owned| {
        rows.get(it.stretch).is_some_and(|row| row.bearer == Bearer::Build(build) && row.side == Side::Piece)
    };
    let seconds = pieces.iter().filter(of_piece).map(|it| rolled(shop, it, as_of));
    let rolled = Seconds(seconds.fold(0, i64::saturating_add));
    let slowed = slower.and_then(|s| {
        let cost = fixed::mul_div(i128::from(rolled.0), s.micros(), s.on_top().micros())?;
        i64::try_from(cost).ok().map(Seconds)
    });
    Adds { film, rolled, slowed }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::fixture::fixture;

    /// `n` builds at the same stage, a minute count each; the last `filmed` of them with the camera there.
    fn history(minutes: &[(u32, bool)]) -> String {
        let mut lines = String::from("person Ana 26\n");
        for (at, (minutes, filmed)) in minutes.iter().enumerate() {
            let (hour, minute) = (8 + minutes / 60, minutes % 60);
            let roll = if *filmed { format!("roll 08:00-{hour:02}:{minute:02}") } else { String::new() };
            let day = at + 1;
            lines += &format!(
                "build b{at} on 2026-02-{day:02}\n\
                 stretch Ana sand from 08:00 to {hour:02}:{minute:02} {roll} for b{at}\n"
            );
        }
        lines
    }

    #[track_caller]
    fn check(minutes: &[(u32, bool)], want: Option<&str>) {
        let it = fixture(&history(minutes));
        let found = paces(&it.shop(), it.end());
        assert_eq!(found.slower.map(|it| it.shown_trimmed()).as_deref(), want, "{found:?}");
    }

    #[test]
    fn filmed_work_against_unfilmed_at_the_same_stage_by_the_item() {
        let plain = [(60, false), (50, false), (70, false)];
        let filmed = [(75, true), (70, true), (90, true)];
        check(&[plain, filmed].concat(), Some("0.25"));
        // Two are too few.
        check(&[&plain[..], &filmed[..2]].concat(), None);
        check(&[&plain[..2], &filmed[..]].concat(), None);
        // Quicker is an answer.
        check(&[plain, [(45, true), (45, true), (45, true)]].concat(), Some("-0.25"));
    }

    #[test]
    fn a_batch_counts_by_its_items_and_amounts_say_nothing() {
        let mut lines = history(&[(60, false), (60, false), (90, true), (90, true), (90, true)]);
        lines += "build more items 2 on 2026-02-10\nstretch Ana sand from 08:00 to 10:00 for more\n";
        let it = fixture(&lines);
        assert_eq!(paces(&it.shop(), it.end()).slower.map(|it| it.shown_trimmed()).as_deref(), Some("0.5"));
        let it = fixture(&(lines + "build amount on 2026-02-11\nstretch Ana sand min 600 for amount\n"));
        assert_eq!(paces(&it.shop(), it.end()).stages[0].unfilmed, 3);
    }

    #[test]
    fn what_filming_adds_to_a_build_is_its_hours_and_the_slowing_of_what_was_filmed() {
        let it = fixture(
            "person Ana 26\nbuild trays\n\
             stretch Ana shoot min 90 for trays side film\n\
             stretch Ana sand from 08:00 to 12:00 roll 08:00-11:00 for trays",
        );
        let quarter = Ratio::share(Dec::parse("0.25").unwrap().0);
        let of = |slower| adds(&it.shop(), it.id("trays"), it.end(), slower);
        // 3 h at 25 % are 0.6 h.
        let want = Adds { film: Seconds(5_400), rolled: Seconds(10_800), slowed: Some(Seconds(2_160)) };
        assert_eq!(of(quarter), want);
        assert_eq!(of(None).slowed, None);
    }

    #[test]
    fn what_was_set_is_read_and_nonsense_is_not() {
        let read = |lines: &str| {
            let it = fixture(lines);
            set(&it.shop(), Day::parse("2026-02-01").unwrap())
        };
        assert_eq!(
            read("setting slow-down 0.25").map(|it| it.hundredths().shown_trimmed()).as_deref(),
            Some("25")
        );
        assert_eq!((read("setting slow-down much"), read("person Ana 26")), (None, None));
    }
}
