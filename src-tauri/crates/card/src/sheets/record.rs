//! What a history comes to, for the eyes of somebody who asks: how far, what work, who wrote it.

use serde::Serialize;

/// What the history comes to.
#[derive(Debug, Clone, Default, Serialize)]
pub struct RecordLines {
    /// The readings over the years; none where fewer than two places are known.
    pub plot: Option<Plot>,
    /// The work, in the order in which a buyer asks for it; groups without a line are left out.
    pub groups: Vec<WorkGroup>,
    /// One sentence: how many visits have a receipt in the book; empty where there is no visit.
    pub receipts: String,
    /// One sentence: how many owners the book has had, and since when the last.
    pub owners: String,
    /// Who wrote in the book, the first first.
    pub writers: Vec<WriterLine>,
    /// One sentence: how many more wrote; empty where all are named.
    pub more_writers: String,
}

/// The readings over the years, as a line with gaps.
///
/// Days count from 1970-01-01, ways in whole units of the card. All lie within [`Plot::days`], and from 0 to
/// [`Plot::most`].
#[derive(Debug, Clone, Default, PartialEq, Eq, Serialize)]
pub struct Plot {
    /// The first day and the last.
    pub days: [i32; 2],
    /// The upper end of the scale, above 0.
    pub most: i64,
    /// Stretches in which the visits follow each other closely enough.
    pub runs: Vec<Vec<PlotPoint>>,
    /// Stretches without a visit that are longer than a buyer lets pass: where each begins and ends.
    pub gaps: Vec<[PlotPoint; 2]>,
    /// The marks below the plot, such as the years.
    pub years: Vec<PlotTick>,
    /// The marks beside it.
    pub ways: Vec<PlotTick>,
    /// One sentence: what a gap is, and how many there are.
    pub note: String,
}

/// A place on the plot.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
pub struct PlotPoint {
    /// The day.
    pub day: i32,
    /// How far the car had gone.
    pub way: i64,
}

/// A mark on a scale.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
pub struct PlotTick {
    /// Where: a day or a way.
    pub at: i64,
    /// What it says.
    pub label: String,
}

/// Work that a buyer asks for in one breath.
#[derive(Debug, Clone, Default, Serialize)]
pub struct WorkGroup {
    /// What it is called.
    pub name: String,
    /// Its items, at most as many as the size shows.
    pub lines: Vec<WorkLine>,
    /// How many more there are, in words; empty where all are shown.
    pub more: String,
}

/// One item: when it was done last, and when it is due next.
#[derive(Debug, Clone, Default, Serialize)]
pub struct WorkLine {
    /// The item.
    pub item: String,
    /// The day on which it was done last; nothing where the book has no record of it.
    pub day: Option<String>,
    /// The reading at which it was done last, without its unit.
    pub reading: Option<String>,
    /// When it is due next: its day, or the reading where no day can be told; empty where neither can.
    pub next: String,
}

/// What one device wrote in the book.
#[derive(Debug, Clone, Default, Serialize)]
pub struct WriterLine {
    /// From when to when.
    pub span: String,
    /// The fingerprint of its key.
    pub key: String,
    /// The handover with which it ended, in words; empty where there was none.
    pub handed_over: String,
}
