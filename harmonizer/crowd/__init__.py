"""The best size for each of very many riders, by the same rules as one rider's fit."""
