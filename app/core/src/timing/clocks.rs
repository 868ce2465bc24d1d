//! Clocks: stretches that have no end yet.

use super::worked;
use crate::measure::InOrder;
use crate::{
    journal::{
        Id, Shop,
        kinds::{Bearer, Side},
        shop::{Stretch, Time},
    },
    measure::{Instant, Seconds},
};

/// A running or paused clock as it stands at a moment.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Clock {
    /// The stretch's entry.
    pub entry: Id,
    /// Whose.
    pub person: Id,
    /// What kind of work.
    pub stage: Id,
    /// What bears it.
    pub bearer: Bearer,
    /// What it is for.
    pub side: Side,
    /// When it began.
    pub from: Instant,
    /// Worked until now, pauses out.
    pub so_far: Seconds,
    /// Paused since.
    pub paused: Option<Instant>,
    /// The camera is rolling.
    pub rolling: bool,
    /// The mark of clocks that go together.
    pub together: Option<Id>,
}

/// Every clock at a moment, by start and then entry. One a person: where two devices each began one, the
/// later begun is the clock, and the earlier is a stretch that nobody ended.
pub fn clocks(shop: &Shop, now: Instant) -> Vec<Clock> {
    let mut running: Vec<Clock> = shop.stretches.iter().filter_map(|it| clock(it, now)).collect();
    running.order_by_key(|clock| (clock.from, clock.entry));
    let mut latest: Vec<Clock> = Vec::new();
    for clock in running.into_iter().rev() {
        if latest.iter().all(|other| other.person != clock.person) {
            latest.push(clock);
        }
    }
    latest.reverse();
    latest
}

/// Stretches without an end that a later clock of the same person has overtaken: to be asked about.
pub fn never_ended(shop: &Shop, now: Instant) -> Vec<&Stretch> {
    let clocks = clocks(shop, now);
    let open = shop.stretches.iter().filter(|stretch| stretch.runs());
    open.filter(|stretch| clocks.iter().all(|clock| clock.entry != stretch.entry())).collect()
}

fn clock(stretch: &Stretch, now: Instant) -> Option<Clock> {
    let Time::Span(span) = stretch.time else { return None };
    stretch.runs().then(|| Clock {
        entry: stretch.entry(),
        person: stretch.person,
        stage: stretch.stage,
        bearer: stretch.bearer,
        side: stretch.side,
        from: span.from,
        so_far: worked::length(span, &stretch.pauses, now),
        paused: stretch.pauses.iter().find(|pause| pause.to.is_none()).map(|pause| pause.from),
        rolling: stretch.rolls(),
        together: stretch.together,
    })
}

#[cfg(test)]
pub(crate) mod tests {
    use super::*;
    use crate::{
        journal::{
            Change, Journal, On, Pen,
            kinds::{Body, Build, Person, Span, Stretch as Stored},
            stages::standing_id,
        },
        measure::{Day, TimeOfDay, When, Zone},
    };

    pub(crate) const ANA: Id = Id::of([1; 16]);
    pub(crate) const BO: Id = Id::of([2; 16]);
    pub(crate) const TRAYS: Id = Id::of([3; 16]);
    pub(crate) const SAND: Id = standing_id(10);
    pub(crate) const FINISH: Id = standing_id(11);

    /// A moment of the one day that these tests play on.
    pub(crate) fn clock(text: &str) -> Instant {
        let (hour, minute) = text.split_once(':').unwrap();
        let time = TimeOfDay::of(hour.parse().unwrap(), minute.parse().unwrap(), 0).unwrap();
        Zone::utc().at(Day::parse("2026-11-20").unwrap(), time)
    }

    pub(crate) fn when(text: &str) -> When {
        Zone::utc().when(clock(text))
    }

    /// A shop with two people and one build, and a pen that writes what the acts say.
    pub(crate) struct Bench {
        pub journal: Journal,
        count: u64,
    }

    impl Bench {
        pub(crate) fn new() -> Bench {
            let mut bench = Bench { journal: Journal::default(), count: 0 };
            let day = On::Day(Day::parse("2026-11-01").unwrap());
            for (id, name) in [(ANA, "Ana"), (BO, "Bo")] {
                let person = Person { on: day, name: name.into(), paid: false, rates: vec![], free: vec![] };
                bench.write(&[Change::write(id, person)]);
            }
            bench.write(&[Change::write(
                TRAYS,
                Build {
                    on: day,
                    title: "Trays".into(),
                    items: 1,
                    due: None,
                    repeat_of: None,
                    run_planned: None,
                    normal_spoil: None,
                    publish: None,
                    film_planned: None,
                },
            )]);
            bench
        }

        pub(crate) fn fresh(&mut self) -> Id {
            self.count += 1;
            let mut bytes = [9; 16];
            bytes[8..].copy_from_slice(&self.count.to_be_bytes());
            Id::of(bytes)
        }

        pub(crate) fn write(&mut self, changes: &[Change]) {
            let pen = Pen { device: Id::of([7; 16]), now_ms: 1_795_000_000_000 };
            let mut count = self.count;
            let lines = pen.write(&self.journal, changes, &mut || {
                count += 1;
                let mut bytes = [8; 16];
                bytes[8..].copy_from_slice(&count.to_be_bytes());
                Id::of(bytes)
            });
            self.count = count;
            for line in lines {
                self.journal.add(&line.text).unwrap();
            }
        }

        pub(crate) fn shop(&self) -> Shop {
            Shop::fold(&self.journal, &Zone::utc())
        }

        pub(crate) fn log(&mut self, person: Id, from: &str, to: &str, pauses: &[(&str, &str)]) -> Id {
            let pauses =
                pauses.iter().map(|(from, to)| Span { from: when(from), to: Some(when(to)) }).collect();
            let stretch = Stored { to: Some(when(to)), pauses, ..plain(person, from) };
            self.enter(stretch.into())
        }

        pub(crate) fn open(&mut self, person: Id, from: &str) -> Id {
            self.enter(plain(person, from).into())
        }

        pub(crate) fn enter(&mut self, body: Body) -> Id {
            let id = self.fresh();
            self.write(&[Change { entry: id, body: Some(body), settles: false }]);
            id
        }

        pub(crate) fn stored(&self, entry: Id) -> Stored {
            match self.journal.body(entry) {
                Some(Body::Stretch(stretch)) => stretch.clone(),
                other => panic!("no stretch: {other:?}"),
            }
        }
    }

    pub(crate) fn plain(person: Id, from: &str) -> Stored {
        Stored {
            on: On::At(when(from)),
            person,
            stage: SAND,
            bearer: Bearer::Build(TRAYS),
            side: Side::Piece,
            from: Some(when(from)),
            to: None,
            minutes: None,
            pauses: vec![],
            rolling: vec![],
            together: None,
            still_running: None,
            step: None,
            one_off: false,
            note: None,
        }
    }

    #[test]
    fn of_two_clocks_of_one_person_the_later_begun_is_the_clock() {
        let mut bench = Bench::new();
        let early = bench.open(ANA, "08:00");
        let late = bench.open(ANA, "09:00");
        let shop = bench.shop();
        let got: Vec<Id> = clocks(&shop, clock("10:00")).iter().map(|clock| clock.entry).collect();
        assert_eq!(got, [late]);
        let left: Vec<Id> = never_ended(&shop, clock("10:00")).iter().map(|it| it.entry()).collect();
        assert_eq!(left, [early]);
    }

    #[test]
    fn a_paused_clock_stands_still() {
        let mut bench = Bench::new();
        let mut stretch = plain(ANA, "08:00");
        stretch.pauses = vec![Span { from: when("09:40"), to: None }];
        bench.enter(stretch.into());
        let shop = bench.shop();
        for now in ["09:40", "10:00", "23:00"] {
            let clock = clocks(&shop, clock(now))[0];
            assert_eq!((clock.so_far, clock.paused), (Seconds(6000), Some(super::tests::clock("09:40"))));
        }
    }
}
