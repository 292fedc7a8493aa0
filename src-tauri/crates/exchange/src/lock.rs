//! The lock: age with a passphrase.

use std::io::{BufRead, Read, Seek, Write};

use age::secrecy::SecretString;
use age::{DecryptError, Decryptor, EncryptError, Encryptor, scrypt};

use crate::ExchangeError;
use crate::bounds::{LONGEST_PASSPHRASE, MOST_WORK, WORK_FACTOR};

/// How every age file begins, in its binary form.
pub(crate) const HEAD: &[u8] = b"age-encryption.org/";

/// What locks a file: 1 to [`LONGEST_PASSPHRASE`](crate::LONGEST_PASSPHRASE) bytes. It is wiped from memory when it is
/// dropped, and shown nowhere.
#[derive(Debug, Clone)]
pub struct Passphrase(SecretString);

impl Passphrase {
    /// A passphrase of any text; one of another length than allowed is refused.
    pub fn new(text: String) -> Result<Passphrase, ExchangeError> {
        if text.is_empty() || text.len() > LONGEST_PASSPHRASE {
            return Err(ExchangeError::Passphrase);
        }
        Ok(Passphrase(text.into()))
    }
}

/// Locks what is written into what comes back; [`age::stream::StreamWriter::finish`] must follow.
pub(crate) fn lock<W: Write>(
    passphrase: &Passphrase,
    out: W,
) -> Result<age::stream::StreamWriter<W>, ExchangeError> {
    let mut recipient = scrypt::Recipient::new(passphrase.0.clone());
    recipient.set_work_factor(WORK_FACTOR);
    let recipients = std::iter::once(&recipient as &dyn age::Recipient);
    let encryptor = Encryptor::with_recipients(recipients).map_err(|error| match error {
        EncryptError::Io(error) => ExchangeError::writing(error),
        other => ExchangeError::damaged(&other),
    })?;
    encryptor.wrap_output(out).map_err(ExchangeError::writing)
}

/// Unlocks what is read.
pub(crate) fn unlock<R: BufRead + Seek>(
    passphrase: &Passphrase,
    input: R,
) -> Result<impl Read + Seek + use<R>, ExchangeError> {
    let mut identity = scrypt::Identity::new(passphrase.0.clone());
    identity.set_max_work_factor(MOST_WORK);
    let decryptor = Decryptor::new_buffered(input).map_err(refused)?;
    if !decryptor.is_scrypt() {
        return Err(ExchangeError::OtherFile);
    }
    decryptor.decrypt(std::iter::once(&identity as &dyn age::Identity)).map_err(refused)
}

fn refused(error: DecryptError) -> ExchangeError {
    match error {
        DecryptError::DecryptionFailed | DecryptError::KeyDecryptionFailed | DecryptError::NoMatchingKeys => {
            ExchangeError::WrongPassphrase
        }
        DecryptError::ExcessiveWork { required, .. } => ExchangeError::TooMuchWork(required),
        DecryptError::Io(error) => ExchangeError::reading(error),
        other => ExchangeError::damaged(&other),
    }
}
