"""What a shop keeps of its season: marks, letters, answers and habits, as readable text."""
