# Colours as they will look.
[condition][colour.ColourOnGround]a colour shows on the ground=ColourOnGround()
[condition][colour.ColourOnGround]- by a difference of less than {number}=difference.base() < {number}
[condition][colour.NearLooks]two colours look alike=NearLooks()
[condition][colour.ThirdColour]two colours make a third=ThirdColour()
