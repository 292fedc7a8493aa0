//! The two networks: which files they are, and loading them.
//!
//! Both are taken as they are published, in the ONNX format. Only the very files that this version was made for are
//! loaded, known by their SHA-256, because a network that is damaged does not fail but reads something else, and a
//! stranger's may ask for any amount of memory.

use std::fs::File;
use std::io::{ErrorKind, Read};
use std::path::Path;

use rten::{Model, ModelOptions, OpRegistry, op_registry};

use crate::PaperError;
use crate::error::Operation;
use crate::prepare::hash_of;

/// A network's file.
pub(super) struct ModelFile {
    /// Its name.
    name: &'static str,
    /// Its SHA-256.
    sum: &'static str,
    /// Its bytes.
    bytes: u64,
}

/// Marks where there is text: PP-OCRv6 small, detection, as in the package rapidocr 3.10.0. The sum is that of the
/// package's own `MODEL_LICENSES.md`.
const DETECTOR: ModelFile = ModelFile {
    name: "PP-OCRv6_det_small.onnx",
    sum: "090f04abcd9d9a7498bc4ebf677e4cb9bdce1fe4197ddb7e529f1ef44e1ff94f",
    bytes: 9_929_594,
};

/// Reads a strip of text: PP-OCRv6 small, recognition, from the same package.
pub(super) const RECOGNISER: ModelFile = ModelFile {
    name: "PP-OCRv6_rec_small.onnx",
    sum: "6f327246b50388f3c176ae304bd95767ea6dc0c9ae92153ef8cbe210b3c14884",
    bytes: 21_234_383,
};

/// Whether both files are there, in whatever state.
pub(super) fn are_there(folder: &Path) -> bool {
    [DETECTOR, RECOGNISER].iter().all(|file| folder.join(file.name).is_file())
}

/// Detector and recogniser; nothing when neither file is there.
pub(super) fn open(folder: &Path) -> Result<Option<(Model, Model)>, PaperError> {
    match (DETECTOR.read(folder)?, RECOGNISER.read(folder)?) {
        (Some(detector), Some(recogniser)) => {
            Ok(Some((DETECTOR.load(detector)?, RECOGNISER.load(recogniser)?)))
        }
        (None, None) => Ok(None),
        (None, Some(_)) => Err(DETECTOR.refused("it is missing")),
        (Some(_), None) => Err(RECOGNISER.refused("it is missing")),
    }
}

impl ModelFile {
    /// This file cannot be used, for that reason.
    pub(super) fn refused(&self, reason: &str) -> PaperError {
        PaperError::Model { file: self.name, reason: reason.to_owned() }
    }

    /// The file's bytes, if it is there and the very file that it should be.
    fn read(&self, folder: &Path) -> Result<Option<Vec<u8>>, PaperError> {
        let path = folder.join(self.name);
        let file = match File::open(&path) {
            Ok(file) => file,
            Err(error) if error.kind() == ErrorKind::NotFound => return Ok(None),
            Err(error) => return Err(Operation::Read.on(&path)(error)),
        };
        let mut bytes = Vec::new();
        // One byte more shows that a file is too long, however long it is.
        file.take(self.bytes + 1).read_to_end(&mut bytes).map_err(Operation::Read.on(&path))?;
        if hash_of(&bytes).to_string() == self.sum {
            Ok(Some(bytes))
        } else {
            Err(self.refused("it is damaged, or of another version"))
        }
    }

    fn load(&self, bytes: Vec<u8>) -> Result<Model, PaperError> {
        let options = ModelOptions::with_ops(operators());
        options.load(bytes).map_err(|error| self.refused(&error.to_string()))
    }
}

/// What the two networks are made of; whatever else the library could do is left out of the program.
#[rustfmt::skip]
fn operators() -> OpRegistry {
    op_registry!(
        Add, AveragePool, BatchNormalization, Concat, Conv, ConvTranspose, Div, Erf, GlobalAveragePool, HardSigmoid,
        Identity, MatMul, MaxPool, Mul, Pow, ReduceMean, Relu, Reshape, Resize, Shape, Sigmoid, Slice, Softmax, Sqrt,
        Squeeze, Sub, Transpose, Unsqueeze
    )
}
