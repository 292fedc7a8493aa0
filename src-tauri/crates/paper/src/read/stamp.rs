//! Days and times that a till prints without a space between them, or whose space was not read.

use std::ops::Range;

use super::dates::month;
use super::page::Line;

/// Where a time ends that begins here: `14:55`, `14:55:10`, `14h55`; with a point, `14.55`, only where something else
/// says that it is one.
pub(super) fn time(line: &Line, start: usize) -> Option<usize> {
    let hour = digits(line, start);
    let sign = line.at(hour.end);
    let minutes = two(line, hour.end + 1, 60)?;
    let hours = (1..=2).contains(&hour.len()) && number(line, &hour).is_some_and(|hour| hour < 24);
    let seconds = (line.at(minutes) == sign).then(|| two(line, minutes + 1, 60)).flatten();
    // Behind the seconds the next number may be glued on as well; behind the minutes it would make them another number.
    let ends = seconds.is_some() || !line.at(minutes).is_ascii_digit();
    (hours && ends && matches!(sign, ':' | '.' | 'h' | 'H')).then_some(seconds.unwrap_or(minutes))
}

/// Whether a day and its time begin here, with no space between them.
pub(super) fn is_stamp(line: &Line, start: usize) -> bool {
    let first = digits(line, start);
    let signed = |at: usize| matches!(line.at(at), '.' | '/' | '-');
    let second = first.end + usize::from(signed(first.end));
    let middle = middle(line, second);
    let third = middle.end + usize::from(signed(middle.end));
    let named = line.at(middle.start).is_alphabetic();
    let last = digits(line, third);
    if middle.is_empty() || !(named || (second > first.end && third > middle.end)) {
        return false;
    }
    // The last part is as long as a year, or as a day where the year came first; what is beyond is the hour.
    let lengths: &[usize] = if first.len() == 4 { &[2] } else { &[4, 2] };
    lengths.iter().filter(|length| **length <= last.len()).any(|length| {
        let end = last.start + length;
        let glued = last.end > end;
        let gap = usize::from(!glued && matches!(line.at(end), '-' | '/' | ',' | '_' | 'T'));
        let parts = [&first, &middle, &(last.start..end)];
        (glued || gap > 0) && is_day(line, parts, named) && time(line, end + gap).is_some()
    })
}

/// Whether this is what is left of a time whose hour was cut off at the colon: `55` and `55Uhr` of `14:55Uhr`, or the
/// minutes with a day glued to them.
pub(super) fn is_rest_of_time(line: &Line, token: &Range<usize>) -> bool {
    let Some(colon) = token.start.checked_sub(1).filter(|at| line.at(*at) == ':') else { return false };
    let hour = (colon.saturating_sub(2)..colon).filter(|at| line.at(*at).is_ascii_digit());
    let hour: String = hour.map(|at| line.at(at)).collect();
    let behind_hour = hour.parse().is_ok_and(|hour: u32| hour < 24);
    let Some(minutes) = two(line, token.start, 60).filter(|_| behind_hour) else { return false };
    let wordy = (minutes..token.end).all(|at| line.at(at).is_alphabetic());
    wordy || day_behind_time(line, minutes)
}

/// Whether a day begins here right behind the minutes of a time: `14:5512.03.2026`.
pub(super) fn day_behind_time(line: &Line, start: usize) -> bool {
    let timed = start >= 4
        && line.at(start - 3) == ':'
        && (start - 2..start).chain([start - 4]).all(|at| line.at(at).is_ascii_digit());
    let first = digits(line, start);
    let middle = middle(line, first.end + 1);
    let last = digits(line, middle.end + 1);
    timed && matches!(last.len(), 2 | 4) && is_day(line, [&first, &middle, &last], false)
}

/// The digits that begin here.
fn digits(line: &Line, start: usize) -> Range<usize> {
    let count = (start..line.chars.len()).take_while(|at| line.at(*at).is_ascii_digit()).count();
    start..start + count
}

/// The digits or the letters that begin here.
fn middle(line: &Line, start: usize) -> Range<usize> {
    let numeric = digits(line, start);
    let letters = (start..line.chars.len()).take_while(|at| line.at(*at).is_alphabetic()).count();
    if numeric.is_empty() { start..start + letters } else { numeric }
}

fn number(line: &Line, at: &Range<usize>) -> Option<u32> {
    line.text(at.clone()).parse().ok()
}

/// Where two digits end that begin here and are less than this.
fn two(line: &Line, start: usize, below: u32) -> Option<usize> {
    let at = start..start + 2;
    let both = at.clone().all(|at| line.at(at).is_ascii_digit());
    number(line, &at).filter(|number| both && *number < below).map(|_| at.end)
}

/// Whether three parts may be a day in any order; `named` says that the second is a month by its name.
fn is_day(line: &Line, [first, second, third]: [&Range<usize>; 3], named: bool) -> bool {
    let small = |at: &Range<usize>, most: u32| {
        at.len() <= 2 && number(line, at).is_some_and(|number| (1..=most).contains(&number))
    };
    let year = |at: &Range<usize>| match at.len() {
        2 => true,
        4 => number(line, at).is_some_and(|year| (1950..2100).contains(&year)),
        _ => false,
    };
    let month = |at: &Range<usize>| {
        if named { month(&line.text(at.clone())).is_some() } else { small(at, 12) }
    };
    let day_first = small(first, 31) && month(second) && year(third);
    let month_first = small(first, 12) && small(second, 31) && year(third);
    let year_first = first.len() == 4 && year(first) && month(second) && small(third, 31);
    day_first || month_first || year_first
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::read::page::Page;
    use crate::read::tests::text;

    #[track_caller]
    fn on_line(row: &str, says: impl Fn(&Line) -> bool) -> bool {
        says(&Page::new(&text(row)).lines[0])
    }

    #[test]
    fn a_day_with_its_time_glued_on() {
        for row in [
            "12.03.202614:55",
            "12/03/2026-14:55:10",
            "12/03/2026/14:55",
            "12.03.2026,14:55",
            "12.03.2026_9:05",
            "12.03.2614:55",
            "12.03.26-14.55",
            "12.03.202614.55",
            "12-03-202614h55",
            "12MAR202614:55",
            "12.03.202614:55:109/68",
            "12-mar-2026-14:55",
            "2026-03-1214:55",
            "2026-03-12T14:55:10",
            "03/28/202623:59",
        ] {
            assert!(on_line(row, |line| is_stamp(line, 0)), "{row}");
        }
    }

    #[test]
    fn what_is_none() {
        for row in [
            "12.03.2026",
            "12.03.202624:55",
            "12.03.202614:65",
            "12.03.202614",
            "32.03.202614:55",
            "12.13.1726-14:55",
            "12.03.2026 14:55",
            "5512-030-05",
            "0986-12-1814.55",
            "QV7120",
        ] {
            assert!(!on_line(row, |line| is_stamp(line, 0)), "{row}");
        }
    }

    #[test]
    fn the_rest_of_a_time_is_not_the_number_behind_a_position() {
        let rest = |row: &str| {
            let start = row.find(':').map_or(0, |colon| colon + 1);
            on_line(row, |line| is_rest_of_time(line, &(start..row.len())))
        };
        assert!(rest("14:55Uhr") && rest("9:05") && rest("14:5512.03.2026"));
        assert!(!rest("1:5512-030-05") && !rest("1:55QX12") && !rest("Nr:5512.03.2026") && !rest("2044:55"));
    }
}
