"""What if: up to three changed farms beside the base, compared, and adopted or dropped."""
