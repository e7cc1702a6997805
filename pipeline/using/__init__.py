"""What the farrier, the owner and the vet see: one visit, a search, an export."""
