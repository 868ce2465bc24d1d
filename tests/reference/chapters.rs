//! Chapters against WebVTT as W3C writes it, and as another reads it.

use benchslate_core::exchange::chapters::{Cue, Fault, Mark, cues, vtt};
use webvtt_parser::Vtt;

fn cue(from: u64, to: u64, title: &str) -> Cue {
    Cue { from, to, title: title.to_owned() }
}

/// The slides of the chapter example: from, to, in thousandths.
fn slides() -> Vec<Cue> {
    vec![
        cue(0, 10_700, "Title Slide"),
        cue(10_700, 47_600, "Introduction by Naomi Black"),
        cue(47_600, 110_100, "Impact of Captions on the Web"),
        cue(110_100, 213_000, "Requirements of a Video text format"),
    ]
}

// Source: published — WebVTT (W3C), introduction, chapters example; read by webvtt-parser 1.4 (crates.io).
#[test]
fn the_chapter_example_is_written_as_it_stands() {
    let file = cues(&slides()).unwrap();
    assert!(file.starts_with("WEBVTT\n\n00:00:00.000 --> 00:00:10.700\nTitle Slide\n"));
    assert!(file.contains("\n\n00:01:50.100 --> 00:03:33.000\nRequirements of a Video text format\n"));
    let read = Vtt::parse(&file).unwrap();
    let got: Vec<(u64, u64, String)> = read
        .cues
        .iter()
        .map(|it| (it.start.as_milliseconds(), it.end.as_milliseconds(), it.text.trim().to_owned()))
        .collect();
    let want: Vec<(u64, u64, String)> = slides().into_iter().map(|it| (it.from, it.to, it.title)).collect();
    assert_eq!(got, want);
}

// Source: published — WebVTT (W3C), cues that nest and cues that overlap in part.
#[test]
fn cues_may_nest_but_not_overlap_in_part() {
    let minute = |minutes: u64, seconds: u64| (minutes * 60 + seconds) * 1000;
    let nested = [
        cue(0, minute(1, 24), "Introduction"),
        cue(0, minute(0, 44), "Topics"),
        cue(minute(0, 44), minute(1, 19), "Presenters"),
        cue(minute(1, 24), minute(5, 0), "Scrolling Effects"),
        cue(minute(1, 35), minute(3, 0), "Achim's Demo"),
        cue(minute(3, 0), minute(5, 0), "Timeline Panel"),
    ];
    assert_eq!(Vtt::parse(&cues(&nested).unwrap()).unwrap().cues.len(), 6);
    let half = [cue(0, minute(1, 0), "one"), cue(minute(0, 30), minute(1, 30), "two")];
    assert_eq!(cues(&half), Err(Fault::Overlap { place: 2 }));
    assert_eq!(
        cues(&[cue(5_000, 6_000, "a"), cue(1_000, 2_000, "b")]),
        Err(Fault::Backwards { place: 2, at: 1 })
    );
}

// Source: library — webvtt-parser 1.4 (crates.io).
#[test]
fn words_that_could_end_a_cue_are_read_back_whole() {
    let titles = ["Oil --> wax", "Nails & <grit>", "two\n\nlines", "plain"];
    let marks: Vec<Mark> =
        (0..).step_by(60).zip(titles).map(|(at, title)| Mark { title: title.to_owned(), at }).collect();
    let file = vtt(&marks, Some(400_000)).unwrap();
    let read = Vtt::parse(&file).unwrap();
    let texts: Vec<String> = read.cues.iter().map(|it| it.text.trim().to_owned()).collect();
    assert_eq!(texts, ["Oil --&gt; wax", "Nails &amp; &lt;grit&gt;", "two lines", "plain"]);
    assert!(file.ends_with("--> 111:06:40.000\nplain\n"), "hours may have three digits");
    assert_eq!(read.cues.last().map(|it| it.end.as_milliseconds()), Some(400_000_000));
}
