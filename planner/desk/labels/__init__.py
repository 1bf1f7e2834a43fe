"""Labels, raft tags and the trace of a batch, looked at before they are printed."""
