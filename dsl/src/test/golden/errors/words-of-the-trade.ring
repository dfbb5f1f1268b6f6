pave lights on shank { }
bezel b for lights on shank { }
resize shank to US 8
engrave "for ever"
