//! Putting the parts of long answers together.

use std::collections::{BTreeMap, BTreeSet};

use super::Note;
use super::frames::{Carrier, Frame, Sender};

/// An answer as a control unit gave it, without what the network put around it.
#[derive(Debug, Clone, PartialEq, Eq)]
pub(super) struct Message {
    pub carrier: Carrier,
    pub answer: Vec<u8>,
}

/// A long answer of which further parts are awaited.
#[derive(Debug)]
struct Open {
    length: Option<usize>,
    answer: Vec<u8>,
    next: u8,
}

/// Puts answers together, part by part.
#[derive(Debug, Default)]
pub(super) struct Messages {
    open: BTreeMap<Sender, Open>,
    mixed: BTreeSet<Sender>,
    whole: Vec<Message>,
    notes: Vec<Note>,
}

impl Messages {
    /// Takes the next part; `false` when it continues nothing, and so was no part.
    pub fn take(&mut self, frame: Frame) -> bool {
        match frame {
            Frame::Whole { carrier, answer } => self.whole.push(Message { carrier, answer }),
            Frame::First { sender, length, part } => self.begin(sender, length, part),
            Frame::Next { sender, index, part } => return self.go_on(sender, index, part),
        }
        true
    }

    /// Ends every answer that is still open, and gives all of them in the order in which they ended.
    pub fn finish(mut self) -> (Vec<Message>, Vec<Note>) {
        for sender in self.open.keys().copied().collect::<Vec<_>>() {
            self.end(sender);
        }
        (self.whole, self.notes)
    }

    /// A second first part right behind the first, or before the first answer has its length: two control
    /// units answer at once. What follows could belong to either, so only the first parts are kept.
    fn begin(&mut self, sender: Sender, length: Option<usize>, part: Vec<u8>) {
        let interrupted = self.open.get(&sender).is_some_and(|open| open.length.is_some() || open.next == 1);
        self.end(sender);
        self.mixed.remove(&sender);
        self.open.insert(sender, Open { length, answer: part, next: 1 });
        if interrupted {
            self.notes.push(Note::PartsMixed);
            self.mixed.insert(sender);
            self.end(sender);
        }
        self.end_if_whole(sender);
    }

    fn go_on(&mut self, sender: Sender, index: u8, part: Vec<u8>) -> bool {
        let Some(open) = self.open.get_mut(&sender) else {
            return self.mixed.contains(&sender);
        };
        if index == open.next {
            open.answer.extend(part);
            open.next = (index + 1) % 16;
            self.end_if_whole(sender);
        } else {
            self.notes.push(Note::PartMissing);
            self.mixed.insert(sender);
            self.end(sender);
        }
        true
    }

    fn end_if_whole(&mut self, sender: Sender) {
        let is_whole = |open: &Open| open.length.is_some_and(|length| open.answer.len() >= length);
        if self.open.get(&sender).is_some_and(is_whole) {
            self.end(sender);
        }
    }

    /// A last part is filled up to the size of a frame, so the answer is cut to its length.
    fn end(&mut self, sender: Sender) {
        if let Some(Open { length, mut answer, .. }) = self.open.remove(&sender) {
            answer.truncate(length.unwrap_or(usize::MAX));
            self.whole.push(Message { carrier: Carrier::Can, answer });
        }
    }
}
