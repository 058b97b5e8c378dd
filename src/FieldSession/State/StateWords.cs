namespace FieldSession.State;

/// <summary>What is said of parts of a study.</summary>
internal static class StateWords
{
    public const string UsualProtocol = "windows and vents shut, fan off, meter A and F, same drive mode, GPS speed";
    public const string LowRumbleOfRoughSurface = "the low rumble of a rough surface";
    public const string HollowNoteAfterBump = "a hollow note after a bump, as from a pipe";
    public const string SteadyToneThatClimbsWithSpeed = "a steady tone that climbs with the speed";
    public const string GrowlThatRisesAndFalls = "a growl that rises and falls";
    public const string PressureInEarsOverJoint = "pressure in the ears over a joint";
    public const string SharpCrackOfJoint = "the sharp crack of a joint";
    public const string EdgeOfBumpInSeatAndFloor = "the edge of a bump in seat and floor";
    public const string WhatStillTremblesAfterBump = "what still trembles after the bump";
    public const string HowSmallBumpsAreSwallowed = "how small bumps are swallowed";
    public const string HowSurelyItHoldsStraightAhead = "how surely it holds straight ahead";
    public const string WeightOfWheelInHand = "the weight of the wheel in the hand";
    public const string WhetherMoreWheelGivesEvenlyMoreTurn = "whether more wheel gives evenly more turn";
    public const string HowFastItIsCalmAfterChangeOfLane = "how fast it settles after a lane change";
    public const string RoadThatSpoilsReading = "road: works, debris, wet patch";
}
