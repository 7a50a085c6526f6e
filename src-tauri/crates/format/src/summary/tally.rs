//! The result of a test by repetitions in the form in which it is written. The keys never change.

use exercises::summary::TallyOn;
use minicbor::{Decode, Encode};

#[derive(Encode, Decode)]
#[cbor(map)]
pub(super) struct TallyOut {
    #[n(0)]
    seconds: u16,
    #[n(1)]
    count: u8,
    #[n(2)]
    whole: bool,
}

impl From<TallyOn> for TallyOut {
    fn from(TallyOn { seconds, count, whole }: TallyOn) -> TallyOut {
        TallyOut { seconds, count, whole }
    }
}

impl From<TallyOut> for TallyOn {
    fn from(TallyOut { seconds, count, whole }: TallyOut) -> TallyOn {
        TallyOn { seconds, count, whole }
    }
}
