//! The square: a QR symbol (ISO/IEC 18004) of the smallest version, and as robust as that version allows.

mod mask;

use qrcode::bits::Bits;
use qrcode::canvas::Canvas;
use qrcode::ec::construct_codewords;
use qrcode::types::Mode;
use qrcode::{EcLevel, Version};

use crate::{CardError, Message, ViewerAddress};
use mask::best_masked;

/// The smallest printed module in micrometres: 0.40 mm.
pub const MODULE_MIN_UM: u32 = 400;
/// The quiet zone around a symbol, in modules.
pub const QUIET_ZONE: u32 = 4;

/// The largest version of a QR symbol.
const VERSION_MAX: u8 = 40;

/// How large a square may be: the highest version allowed, 1 to 40.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub struct SquareLimit {
    version: u8,
}

/// How much of a symbol may be lost and restored (ISO/IEC 18004): 7, 15, 25 or 30 per cent.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Level {
    /// 15 per cent.
    M,
    /// 25 per cent.
    Q,
    /// 30 per cent.
    H,
}

/// A QR symbol, without its quiet zone.
#[derive(Clone, PartialEq, Eq)]
pub struct Square {
    version: u8,
    level: Level,
    /// Row by row from the upper left.
    dark: Vec<bool>,
}

/// What a symbol holds, segment by segment.
enum Content<'a> {
    /// One byte segment.
    Bytes(&'a [u8]),
    /// A byte segment for the address with its `#`, and a numeric one for the digits.
    Code { address: &'a [u8], digits: &'a [u8] },
}

impl SquareLimit {
    /// Any version that exists.
    pub const LARGEST: SquareLimit = SquareLimit { version: VERSION_MAX };

    /// The largest version that, with its quiet zone and modules of at least [`MODULE_MIN_UM`], is at most
    /// `width` micrometres wide; none when even version 1 is wider.
    pub fn within_um(width: u32) -> Option<SquareLimit> {
        let modules = width / MODULE_MIN_UM;
        (1..=VERSION_MAX)
            .rev()
            .find(|version| side_of(*version) + 2 * QUIET_ZONE <= modules)
            .map(|version| SquareLimit { version })
    }

    /// The highest version allowed.
    pub fn version(self) -> u8 {
        self.version
    }
}

impl Square {
    /// The square of a signed card.
    pub fn code(viewer: &ViewerAddress, message: &Message, limit: SquareLimit) -> Result<Square, CardError> {
        let address = format!("{viewer}#");
        let digits = message.digits();
        let content = Content::Code { address: address.as_bytes(), digits: digits.as_bytes() };
        Square::smallest(&content, limit)?.ok_or(CardError::TextTooLong { version: limit.version })
    }

    /// The square of a text that any camera app shows.
    pub fn plain(text: &str, limit: SquareLimit) -> Result<Square, CardError> {
        Square::smallest(&Content::Bytes(text.as_bytes()), limit)?
            .ok_or(CardError::TextTooLong { version: limit.version })
    }

    /// The smallest version at level M, then the highest level that fits the same version.
    fn smallest(content: &Content<'_>, limit: SquareLimit) -> Result<Option<Square>, CardError> {
        let Some(version) = (1..=limit.version).find(|version| content.fits(*version, Level::M)) else {
            return Ok(None);
        };
        let level = [Level::H, Level::Q].into_iter().find(|level| content.fits(version, *level));
        Square::draw(content, version, level.unwrap_or(Level::M)).map(Some)
    }

    fn draw(content: &Content<'_>, version: u8, level: Level) -> Result<Square, CardError> {
        let too_long = |_| CardError::TextTooLong { version };
        let mut bits = Bits::new(normal(version));
        match content {
            Content::Bytes(bytes) => bits.push_byte_data(bytes).map_err(too_long)?,
            Content::Code { address, digits } => {
                bits.push_byte_data(address).map_err(too_long)?;
                bits.push_numeric_data(digits).map_err(too_long)?;
            }
        }
        bits.push_terminator(level.into()).map_err(too_long)?;
        let (data, checks) =
            construct_codewords(&bits.into_bytes(), normal(version), level.into()).map_err(too_long)?;
        let mut symbol = Canvas::new(normal(version), level.into());
        symbol.draw_all_functional_patterns();
        symbol.draw_data(&data, &checks);
        Ok(Square { version, level, dark: best_masked(&symbol) })
    }

    /// The version, 1 to 40.
    pub fn version(&self) -> u8 {
        self.version
    }

    /// The level of error correction.
    pub fn level(&self) -> Level {
        self.level
    }

    /// How many modules one side has, without the quiet zone: 21 to 177.
    pub fn side(&self) -> u32 {
        side_of(self.version)
    }

    /// Whether the module in this column and row is dark; what lies outside is light.
    pub fn is_dark(&self, column: u32, row: u32) -> bool {
        let side = self.side();
        column < side && row < side && self.dark.get((row * side + column) as usize).copied().unwrap_or(false)
    }

    /// The dark runs of modules, row by row: column, row and length.
    pub fn runs(&self) -> Vec<(u32, u32, u32)> {
        let mut runs = Vec::new();
        for row in 0..self.side() {
            let mut column = 0;
            while column < self.side() {
                let length = (column..self.side()).take_while(|column| self.is_dark(*column, row)).count();
                let length = u32::try_from(length).unwrap_or(0);
                if length > 0 {
                    runs.push((column, row, length));
                }
                column += length + 1;
            }
        }
        runs
    }

    /// The dark modules as the `d` of an SVG path, one unit a module, without the quiet zone.
    pub fn svg_path(&self) -> String {
        let run = |(column, row, length)| format!("M{column} {row}h{length}v1h-{length}z");
        self.runs().into_iter().map(run).collect()
    }
}

impl Content<'_> {
    /// Whether the segments fit a version at a level.
    fn fits(&self, version: u8, level: Level) -> bool {
        let version = normal(version);
        Bits::new(version).max_len(level.into()).is_ok_and(|capacity| self.bits(version) <= capacity)
    }

    /// How many bits the segments take, without the terminator, which may be cut short.
    fn bits(&self, version: Version) -> usize {
        let segment = |mode: Mode, count: usize| {
            version.mode_bits_count() + mode.length_bits_count(version) + mode.data_bits_count(count)
        };
        match self {
            Content::Bytes(bytes) => segment(Mode::Byte, bytes.len()),
            Content::Code { address, digits } => {
                segment(Mode::Byte, address.len()) + segment(Mode::Numeric, digits.len())
            }
        }
    }
}

impl From<Level> for EcLevel {
    fn from(level: Level) -> EcLevel {
        match level {
            Level::M => EcLevel::M,
            Level::Q => EcLevel::Q,
            Level::H => EcLevel::H,
        }
    }
}

/// ISO/IEC 18004: version 1 has 21 modules a side, and each further version four more.
fn side_of(version: u8) -> u32 {
    17 + 4 * u32::from(version)
}

fn normal(version: u8) -> Version {
    Version::Normal(i16::from(version))
}

impl std::fmt::Debug for Square {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        write!(f, "Square({}-{:?})", self.version, self.level)
    }
}

#[cfg(test)]
mod tests;
