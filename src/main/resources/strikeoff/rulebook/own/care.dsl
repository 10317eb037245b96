# Care for people.
[condition][care.Exposure]somebody works with something that harms=Exposure()
[condition][care.Exposure]- without a mask against dye powder=withoutMask() == true, dyePowder() == true
[condition][care.Exposure]- without gloves=withoutGloves() == true
[condition][care.Exposure]- without goggles=withoutGoggles() == true
