//! Any bytes at all are a photo or one sentence.
#![no_main]

libfuzzer_sys::fuzz_target!(|bytes: &[u8]| {
    if let Err(refused) = paper::prepare(bytes) {
        assert!(!refused.to_string().contains('\n'));
    }
});
