//! The sizes of a card, the paper it is printed on, and where it lies on that paper.

use serde::Serialize;

use crate::{MODULE_MIN_UM, SquareLimit};

/// A larger module gains nothing at arm's length and only crowds the words beside it.
const MODULE_MAX_UM: u32 = 800;

/// ISO 216 A4.
const A4: Extent = Extent { x: 210_000, y: 297_000 };
/// US Letter, 8.5 in by 11 in.
const LETTER: Extent = Extent { x: 215_900, y: 279_400 };

/// The sizes in which a card is made.
#[derive(Debug, Clone, Copy, Default, PartialEq, Eq)]
pub enum SheetSize {
    /// ISO/IEC 7810 ID-1, 85.60 mm by 53.98 mm, with two sides: it goes where a driving licence goes.
    Id1,
    /// ISO 216 A6 upright, 105 mm by 148 mm, with two sides.
    A6,
    /// ISO 216 A5 across, 210 mm by 148 mm, to be folded once to A6.
    #[default]
    A5,
    /// A full page: A4, or US Letter where that is the paper.
    A4,
}

/// The paper that lies in the printer.
#[derive(Debug, Clone, Copy, Default, PartialEq, Eq)]
pub enum SheetPaper {
    /// As large as the card itself.
    #[default]
    Own,
    /// ISO 216 A4, 210 mm by 297 mm.
    A4,
    /// US Letter, 215.9 mm by 279.4 mm.
    Letter,
}

/// The edge about which a printer turns the paper between front and back, so that both come to stand upright.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Turn {
    /// The longer one.
    LongEdge,
    /// The shorter one.
    ShortEdge,
}

/// A width and a height, or how far from the left and from the top, in micrometres.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
pub struct Extent {
    /// Across.
    pub x: u32,
    /// Down.
    pub y: u32,
}

/// Where a card lies on its paper: in the middle, so that front and back meet about whichever edge it is turned.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
pub struct SheetLayout {
    /// The paper.
    pub paper: Extent,
    /// The card.
    pub card: Extent,
    /// The upper left corner of the card on the paper.
    pub at: Extent,
    /// Whether the card is folded across its middle, from top to bottom.
    pub folded: bool,
}

impl SheetSize {
    /// Every size, the smallest first.
    pub const ALL: [SheetSize; 4] = [SheetSize::Id1, SheetSize::A6, SheetSize::A5, SheetSize::A4];

    /// The width in micrometres that the card leaves for the square with its quiet zone.
    ///
    /// ID-1 leaves what its height does: 1.99 mm above and below, beside the 1.6 mm of the quiet zone itself.
    pub const fn square_width_um(self) -> u32 {
        match self {
            SheetSize::Id1 => 50_000,
            SheetSize::A6 | SheetSize::A5 | SheetSize::A4 => 74_000,
        }
    }

    /// The largest square that the card holds with modules of at least 0.40 mm.
    pub fn square_limit(self) -> SquareLimit {
        SquareLimit::within_um(self.square_width_um()).unwrap_or(SquareLimit::LARGEST)
    }

    /// How many lines of work each group shows, so that nothing is crammed; the rest is counted.
    pub const fn work_lines(self) -> usize {
        match self {
            SheetSize::Id1 => 0,
            SheetSize::A6 => 1,
            SheetSize::A5 => 4,
            SheetSize::A4 => 6,
        }
    }

    /// How many of so many writers a card names, so that nothing is crammed; the rest is counted.
    ///
    /// A6 has three lines beside a square of its full size, one of them for the count where there are more.
    pub const fn writers_named(self, writers: usize) -> usize {
        match self {
            SheetSize::Id1 => 0,
            SheetSize::A6 if writers > 3 => 2,
            SheetSize::A6 => 3,
            SheetSize::A5 | SheetSize::A4 => 4,
        }
    }

    /// Whether the card lists the visits one by one.
    pub const fn lists_visits(self) -> bool {
        matches!(self, SheetSize::A5 | SheetSize::A4)
    }

    /// The module in micrometres for a square of `side` modules: as large as the card leaves room for, but no
    /// larger than a camera needs.
    pub(super) fn module_um(self, side_with_quiet_zone: u32) -> u32 {
        (self.square_width_um() / side_with_quiet_zone.max(1)).clamp(MODULE_MIN_UM, MODULE_MAX_UM)
    }

    /// The size in micrometres; none of a full page, which is as large as its paper.
    const fn extent(self) -> Option<Extent> {
        match self {
            SheetSize::Id1 => Some(Extent { x: 85_600, y: 53_980 }),
            SheetSize::A6 => Some(Extent { x: 105_000, y: 148_000 }),
            SheetSize::A5 => Some(Extent { x: 210_000, y: 148_000 }),
            SheetSize::A4 => None,
        }
    }
}

impl SheetLayout {
    /// A card of this size on this paper.
    pub fn new(size: SheetSize, paper: SheetPaper) -> SheetLayout {
        let sheet = match paper {
            SheetPaper::Own => None,
            SheetPaper::A4 => Some(A4),
            SheetPaper::Letter => Some(LETTER),
        };
        let card = size.extent().or(sheet).unwrap_or(A4);
        let paper = sheet.map_or(card, |sheet| sheet.as_wide_as(card));
        let at = Extent { x: (paper.x - card.x) / 2, y: (paper.y - card.y) / 2 };
        SheetLayout { paper, card, at, folded: size == SheetSize::A5 }
    }

    /// Whether the card has to be cut out of its paper.
    pub fn is_cut(&self) -> bool {
        self.paper != self.card
    }

    /// How the printer has to turn the paper. A page across turns like the leaf of a book about its shorter edge.
    pub fn turn(&self) -> Turn {
        if self.paper.x > self.paper.y { Turn::ShortEdge } else { Turn::LongEdge }
    }
}

impl Extent {
    /// Laid across where `card` would be too wide for it upright, with a margin that any printer reaches.
    const fn as_wide_as(self, card: Extent) -> Extent {
        const REACHED: u32 = 10_000;
        let whole = card.x == self.x && card.y == self.y;
        if whole || card.x + 2 * REACHED <= self.x { self } else { Extent { x: self.y, y: self.x } }
    }
}
