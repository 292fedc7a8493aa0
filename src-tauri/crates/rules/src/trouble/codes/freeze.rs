//! Freeze frames: what a control unit kept of the moment at which a code set.

use super::{Code, Pid, Value};

/// The values of the moment at which a code set (service 02).
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct FreezeFrame {
    /// Its number; the first is 0, and many cars have no other.
    pub number: u8,
    /// The code that it belongs to; `None` when the text does not tell.
    pub code: Option<Code>,
    /// What was kept, in the order in which it stands.
    pub values: Vec<Value>,
}

impl FreezeFrame {
    /// The value of one parameter.
    pub fn value(&self, pid: Pid) -> Option<Value> {
        self.values.iter().copied().find(|value| value.pid == pid)
    }
}

/// Puts a code into the frame of this number: the last one, or a further one when that already has a code.
pub(super) fn put_code(frames: &mut Vec<FreezeFrame>, number: u8, code: Code) {
    let frame = frame(frames, number, |frame| frame.code.is_none_or(|known| known == code));
    frame.code = Some(code);
}

/// Puts a value into the frame of this number: the last one, or a further one when that already has this
/// value, because another control unit has a frame of the same number.
pub(super) fn put_value(frames: &mut Vec<FreezeFrame>, number: u8, value: Value) {
    frame(frames, number, |frame| frame.value(value.pid).is_none()).values.push(value);
}

fn frame(
    frames: &mut Vec<FreezeFrame>,
    number: u8,
    has_room: impl Fn(&FreezeFrame) -> bool,
) -> &mut FreezeFrame {
    let last = frames.iter().rposition(|frame| frame.number == number);
    let at = last.filter(|&at| has_room(&frames[at])).unwrap_or_else(|| {
        frames.push(FreezeFrame { number, code: None, values: Vec::new() });
        frames.len() - 1
    });
    &mut frames[at]
}
